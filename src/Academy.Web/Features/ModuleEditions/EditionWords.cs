using Academy.Competence.Quizzes;
using Academy.Modules.Comparing;
using Academy.Web.Wording;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>The sentences about editions.</summary>
internal static class EditionWords
{
    /// <summary>"written by Ines, read over by Rosa", "came with the library".</summary>
    public static string By(EditionInForce edition, Names names) =>
        edition.Published switch
        {
            null => "came with the library",
            { ReviewedBy: { } reader } own => $"written by {names.Of(own.WrittenBy)}, read over by {names.Of(reader)}",
            var own => $"written by {names.Of(own.WrittenBy)}; nobody else here could read it over",
        };

    /// <summary>"Changed for safety: older passes counted until 24 June."</summary>
    public static string? Safety(EditionInForce edition, Names names) =>
        edition switch
        {
            { IsSafetyChange: false } => null,
            { Seen.CatchUpBy: { } day } when day >= names.Time.Today =>
                $"Changed for safety: older passes count until {names.Time.Day(day)}.",
            { Seen.CatchUpBy: { } day } => $"Changed for safety: older passes counted until {names.Time.Day(day)}.",
            _ => "Changed for safety: older passes ended at once.",
        };

    /// <summary>"from 3 March to 5 April", "since 5 April".</summary>
    public static string When(EditionInForce edition, EditionInForce? next, SalonTime time) =>
        next is null
            ? time.Since(time.DayOf(edition.Since))
            : $"from {time.Date(time.DayOf(edition.Since))} to {time.Date(time.DayOf(next.Since))}";

    public static string Word(Change change) =>
        change switch
        {
            Change.Same => "the same",
            Change.Added => "added",
            Change.Removed => "removed",
            Change.Changed => "changed",
            _ => throw new System.Diagnostics.UnreachableException($"No word for {change}."),
        };

    /// <summary>The name of a change in the style sheet.</summary>
    public static string Shape(Change change) => change.ToString().ToLowerInvariant();
}
