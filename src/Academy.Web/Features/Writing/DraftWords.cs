using System.Globalization;
using Academy.Competence;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Wording;

namespace Academy.Web.Features.Writing;

/// <summary>How the pages about drafts speak of one.</summary>
internal static class DraftWords
{
    /// <summary>"Rosa saved it 5 minutes ago", "Rosa asks for it to be read, since 10:12 today", "came back from Ines, written by Rosa".</summary>
    public static string Stand(DraftLine draft, Names names) =>
        draft switch
        {
            { AskedAt: { } at } => $"{names.Of(draft.Author)} asks for it to be read, since {names.Time.At(at)}.",
            { IsReturned: true } => $"Given back to {names.Of(draft.Author)} to mend; saved {names.Time.Ago(draft.SavedAt)}.",
            _ => $"{names.Of(draft.Author)} saved it {names.Time.Ago(draft.SavedAt)}.",
        };

    public static string Stand(Draft draft, Names names) =>
        Stand(new DraftLine(draft.Module, draft.Author, draft.SavedAt, draft.AskedAt, draft.Returned is not null), names);

    /// <summary>"Nothing has to be put right", "1 thing has to be put right, and 2 hints".</summary>
    public static string Found(IReadOnlyCollection<Finding> findings)
    {
        var wrong = findings.Count(finding => finding.Severity > Severity.Hint);
        var hints = findings.Count - wrong;
        var toMend =
            wrong == 0
                ? "Nothing has to be put right"
                : $"{Counts.Of(wrong, "thing")} {(wrong == 1 ? "has" : "have")} to be put right";
        return hints == 0 ? toMend : $"{toMend}, and {Counts.Of(hints, "hint")}";
    }

    /// <summary>"Line 34: The quiz has 6 questions; write at least 24."</summary>
    public static string ToMend(Finding finding) =>
        finding.Line > 0
            ? string.Create(CultureInfo.InvariantCulture, $"Line {finding.Line}: {finding.Message}")
            : finding.Message;

    public static string Kind(Severity severity) =>
        severity switch
        {
            Severity.Broken => "broken: it cannot be shown",
            Severity.Fault => "to put right",
            _ => "hint",
        };

    /// <summary>"Ines or Dora"; who could read it besides its author.</summary>
    public static string Readers(IEnumerable<Competence.People.Person> could) =>
        Counts.Or([.. could.Select(person => person.Name)]);
}
