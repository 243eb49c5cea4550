using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Wording;

namespace Academy.Web.Features.Writing;

/// <summary>What is said of a finished draft, and who is asked.</summary>
/// <param name="Found">"Nothing has to be put right".</param>
/// <param name="ToMend">What has to be put right first.</param>
/// <param name="IsFirst">Whether it is a first edition, which is a change for nobody.</param>
public sealed record AskView(
    string Title,
    string Found,
    IReadOnlyList<string> ToMend,
    bool IsFirst,
    string Will,
    string Button,
    string Edition
)
{
    public const string CannotBeRead =
        "The text is broken and cannot be shown. What to put right stands beside it, with its lines";

    internal static AskView Of(DraftRead read, string title, Who who, Names names)
    {
        var could = Publishing.CouldReview(who.Book, who.Person.Id, who.Today).ToListed();
        var next = Publishing.NextEdition(who.Book, read.Draft.Module);
        return new(
            title,
            DraftWords.Found(read.Findings),
            [.. read.Findings.Where(finding => finding.Severity > Modules.Severity.Hint).Select(DraftWords.ToMend)],
            next == 1,
            could.IsEmpty
                ? "Nobody else here writes modules, so you read it over yourself and publish it."
                : $"{DraftWords.Readers(could)} reads it over, and publishes it or gives it back.",
            could.IsEmpty ? "Go on to publishing" : "Ask for it to be read",
            $"edition {next}, saved {names.Time.Ago(read.Draft.SavedAt)}"
        );
    }

    internal static bool IsFirstEdition(SalonBook book, ModuleName module) => Publishing.NextEdition(book, module) == 1;

    internal static string MovedOn(Draft there, Names names) =>
        $"{names.Of(there.Author)} saved this {names.Time.Ago(there.SavedAt)}, after you began. Look at the text again, and ask if you still want to";
}
