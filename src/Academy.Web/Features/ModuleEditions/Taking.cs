using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Severity = Academy.Modules.Severity;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>The library's edition on its way to be the salon's next.</summary>
public sealed class Taking(Lesson librarys, Lesson own, EditionHistory history, SalonBook book, Person by, DateOnly today)
{
    /// <summary>Whether the salon's own has the library's words already.</summary>
    public bool IsTakenAlready => Shelf.HasWordsOf(librarys, own);

    public Module Librarys => librarys.Module;

    public Module Own => own.Module;

    public EditionHistory History => history;

    public int Next { get; } = Publishing.NextEdition(book, own.Module.Name);

    /// <summary>Who has to read it over; nobody where nobody else writes modules here.</summary>
    public IReadOnlyList<Person> Readers { get; } = [.. Publishing.CouldReview(book, by.Id, today)];

    public string Names => Counts.Or([.. Readers.Select(reader => reader.Name)]);

    public DateOnly CatchUpBy => Publishing.CatchUpBy(librarys.Module, today);

    public ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Pictures => ModuleFiles.Of(librarys).Pictures;

    /// <summary>
    /// Whether it is likely to change what can hurt: the library's last safety change, or one of the salon's own, lies between the two.
    /// </summary>
    public bool IsLikelySafety =>
        history.HasLibraryChanged(librarys.Module.Hash)
        || history.Editions.SkipWhile(edition => !edition.IsOwn).Any(edition => edition.IsSafetyChange);

    /// <summary>The library's text under the salon's next number.</summary>
    public (Lesson? Lesson, Listed<Finding> Findings) Written(bool isSafety)
    {
        var since = isSafety ? Next : Math.Min(own.Module.SafetyCriticalSince, Next);
        var files = ModuleFiles.Of(librarys);
        return (files with { Text = EditionNumbers.Write(files.Text, Next, since) }).Read();
    }

    public EditionOffered Offered(Lesson written, Listed<Finding> findings, TakeForm form, Person person) =>
        new(
            written.Module,
            findings.Count(finding => finding.Severity > Severity.Hint),
            person,
            ReviewedBy: null,
            new Words(form.Change?.Trim() ?? ""),
            form.IsSafety ? form.CatchUpBy : null,
            librarys.Module.Hash
        );

    public Draft Draft(Lesson written, EditionOffered offered, DateTimeOffset now) =>
        new(
            written.Module.Name,
            written.Text,
            by.Id,
            now,
            AskedAt: now,
            offered.Change.Text,
            offered.CatchUpBy,
            Returned: null,
            Version: 0
        );
}

/// <summary>What is typed to take the library's edition.</summary>
public sealed class TakeForm
{
    /// <summary>Made when the form is shown, so that a second sending is no second edition.</summary>
    public Guid Operation { get; set; }

    /// <summary>The number under which it was shown.</summary>
    public int Next { get; set; }

    [StringLength(2000)]
    public string? Change { get; set; }

    public bool IsSafety { get; set; }

    public DateOnly? CatchUpBy { get; set; }

    internal static TakeForm Fresh(Taking taking, Guid operation) =>
        new()
        {
            Operation = operation,
            Next = taking.Next,
            Change = $"The library’s edition {taking.Librarys.Edition}, in place of our own.",
            IsSafety = taking.IsLikelySafety,
            CatchUpBy = taking.CatchUpBy,
        };
}

/// <summary>What taking the library's edition means.</summary>
public sealed record TakeView(string Title, string Heading, string Lead, string Editions, string Compare, string Button, int Next)
{
    internal static TakeView Of(Taking taking)
    {
        var (own, librarys) = (taking.Own, taking.Librarys);
        var hasChanged = taking.History.HasLibraryChanged(librarys.Hash);
        return new(
            $"{own.Title}: the library’s edition",
            hasChanged ? "The library has changed since" : "Back to the library’s edition",
            $"Its edition {librarys.Edition} becomes edition {taking.Next} here, in place of the salon’s own edition {own.Edition}. "
                + "The salon’s own stays in the history and can be compared with it.",
            Paths.ModuleEditions(own.Name.Value),
            Paths.CompareEditions(own.Name.Value, own.Hash, librarys.Hash),
            taking.Readers.Count == 0 ? $"Publish it as edition {taking.Next}" : $"Ask {taking.Names} to read it over",
            taking.Next
        );
    }
}
