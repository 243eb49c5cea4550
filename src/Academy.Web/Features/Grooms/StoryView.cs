using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>One line of what was told.</summary>
public sealed record ToldLine(string Label, string Words);

/// <summary>One sign-off, also one that was replaced, came late or was disputed.</summary>
public sealed record SignOffLine(
    string Href,
    string Heading,
    string Level,
    IReadOnlyList<string> NotMet,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> ToJunior,
    string? Words,
    bool IsInForce
);

/// <summary>One incident or near miss.</summary>
public sealed record IncidentLine(
    string Heading,
    string Line,
    string Happened,
    string? Done,
    string Review,
    string? ReviewWords,
    bool IsCritical
);

/// <summary>What is flagged of the groom, and what was spoken about it.</summary>
public sealed record FlagNote(string Words, string? Spoken, string? Says, string? Href);

/// <summary>Somebody whose part a senior may sign off.</summary>
public sealed record ToSign(string Href, string Words);

/// <summary>One groom's story.</summary>
public sealed record StoryView(
    Guid Groom,
    string Dog,
    string DogHref,
    string? Swatch,
    string Heading,
    string State,
    IReadOnlyList<ToldLine> Told,
    IReadOnlyList<string> NotNoted,
    string? Notes,
    IReadOnlyList<SignOffLine> SignOffs,
    IReadOnlyList<IncidentLine> Incidents,
    IReadOnlyList<FlagNote> Flags,
    IReadOnlyList<string> Tellings,
    string? PutRight,
    IReadOnlyList<ToSign> ToSign,
    bool MayReport
)
{
    public static StoryView Of(GroomId id, string dog, IReadOnlyCollection<Recorded> facts, Person viewer, Names names)
    {
        var start = GroomStories.StartOf(facts);
        return GroomStories.Of(facts) is { } story
            ? OfTold(story, dog, facts, viewer, names)
            : OfStarted(id, start!, dog, facts, viewer, names);
    }

    private static StoryView OfTold(GroomStory story, string dog, IReadOnlyCollection<Recorded> facts, Person viewer, Names names)
    {
        var groom = story.Groom;
        return new(
            groom.Id.Value,
            dog,
            Paths.Dog(groom.Dog.Value),
            CoatSwatch.Of(groom.Coat.Value),
            $"{dog}, {names.Time.Day(groom.StartedAt)}",
            StateOf(story, names),
            [.. ToldWords.Of(groom, names)],
            [.. ToldWords.NotNoted(groom)],
            groom.Notes.IsEmpty ? null : groom.Notes.Text,
            [.. story.SignOffs.Select(signed => SignOffWords.Of(signed, story, GroomStories.DisputesOf(facts), names))],
            [.. story.Incidents.Select(incident => IncidentWords(incident, names))],
            [.. Flagging.Of(facts).Select(flag => NoteOf(flag, viewer, names))],
            [
                .. facts
                    .Where(told => told.Fact is GroomLogged)
                    .Skip(1)
                    .Select(told => $"Put right {names.Time.At(told.RecordedAt)}."),
            ],
            PutRight: groom.By == viewer.Id && !story.IsSignedOff ? Paths.Log(groom.Id.Value) : null,
            [.. WaitingFor(story, viewer, names)],
            MayReport: true
        );
    }

    private static StoryView OfStarted(
        GroomId id,
        StartedGroom start,
        string dog,
        IReadOnlyCollection<Recorded> facts,
        Person viewer,
        Names names
    )
    {
        var why = facts.Select(told => told.Fact).OfType<GroomAbandoned>().LastOrDefault()?.Why.Text;
        return new(
            id.Value,
            dog,
            Paths.Dog(start.Dog.Value),
            Swatch: null,
            $"{dog}, {names.Time.Day(start.At)}",
            start.IsAbandoned
                ? $"Started {names.Time.At(start.At)} by {names.Of(start.By)} and taken off the table: {why}"
                : $"Started {names.Time.At(start.At)} by {names.Of(start.By)}. Not told yet.",
            Told: [],
            NotNoted: [],
            Notes: null,
            SignOffs: [],
            Incidents: [],
            Flags: [],
            Tellings: [],
            PutRight: start.By == viewer.Id && !start.IsAbandoned ? Paths.Log(id.Value) : null,
            ToSign: [],
            MayReport: false
        );
    }

    private static string StateOf(GroomStory story, Names names)
    {
        var groom = story.Groom;
        var waiting = groom.Doers.Where(person => story.SignOffOf(person) is null && person != groom.Watcher).ToList();
        return (waiting, groom.Watcher) switch
        {
            ([], _) => "Signed off.",
            (_, null) => story.IsSignedOff ? "Done alone, inspected in part." : "Done alone. Nobody has inspected it.",
            (_, { } watcher) =>
                $"{names.Of(watcher)} watched. {Counts.And([.. waiting.Select(names.Of)])}: waits for the sign-off.",
        };
    }

    // Whether this senior may sign is for the rules to say, on the page where it is signed.
    private static IEnumerable<ToSign> WaitingFor(GroomStory story, Person viewer, Names names) =>
        from doer in story.Groom.Doers
        where viewer.MayJudgeByRole && !story.Groom.Doers.Contains(viewer.Id) && story.SignOffOf(doer) is null
        select new ToSign(Paths.SignOff(story.Groom.Id.Value, doer.Value), $"Sign off {names.Of(doer)}’s part");

    private static FlagNote NoteOf(FlagStory flag, Person viewer, Names names) =>
        new(
            Say.Flag(flag, names),
            Say.SpokenAbout(flag, names),
            flag.Spoken.IsEmpty ? null : flag.Spoken.Text,
            viewer.Role == Role.Owner && flag.IsOpen ? Paths.Flag(flag.Groom.Value, flag.Person.Value) : null
        );

    private static IncidentLine IncidentWords(IncidentStory told, Names names)
    {
        var incident = told.Incident;
        var during = incident.During.Select(names.Of).ToList();
        return new(
            $"{Say.Capital(Say.Word(incident.Kind))}, {Say.Word(incident.Severity)}",
            $"{Say.Capital(Say.Word(incident.Site))}; {names.Of(incident.Person)} was grooming{(during.Count > 0 ? $" ({Counts.And(during)})" : "")}; vet: {Say.Word(incident.Vet)}; reported by {names.Of(incident.ReportedBy)} {names.Time.At(incident.ReportedAt)}.",
            incident.WhatHappened.Text,
            incident.WhatWasDone.IsEmpty ? null : incident.WhatWasDone.Text,
            told.Review is { } review ? ReviewOf(review, names)
                : incident.Severity == Competence.Salons.Severity.NearMiss ? "A near miss. It lowers nothing."
                : "Waits for the owner’s review.",
            told.Review is { Found.IsEmpty: false } found ? found.Found.Text : null,
            incident.IsCritical
        );
    }

    private static string ReviewOf(IncidentReview review, Names names)
    {
        var technique = review.IsTechnique ? "technique contributed" : "technique did not contribute";
        var responsible = review.Responsible is { } person ? $"{names.Of(person)} was responsible" : "nobody was responsible";
        return $"Reviewed by {names.Of(review.ReviewedBy)} {names.Time.At(review.ReviewedAt)}: {responsible}, {technique}.";
    }
}
