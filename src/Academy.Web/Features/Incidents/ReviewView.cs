using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Incidents;

/// <summary>A review as the owner types it.</summary>
public sealed class ReviewForm
{
    /// <summary>Sent where nobody was responsible.</summary>
    public const string Nobody = "nobody";

    private const int MostLetters = 4000;

    public Guid Operation { get; set; }

    public long Version { get; set; }

    public string? Responsible { get; set; }

    public string? Technique { get; set; }

    public string? Found { get; set; }

    public PersonId? Person => Guid.TryParse(Responsible, out var person) ? new PersonId(person) : null;

    public bool IsTechnique => Person is not null && Technique == bool.TrueString;

    /// <summary>Whether what follows can be told already.</summary>
    public bool IsChosen => Responsible == Nobody || (Person is not null && !string.IsNullOrEmpty(Technique));

    /// <summary>Whether this very review is kept already: the form was sent twice.</summary>
    public bool IsKept(IncidentReview? review, Person by) =>
        review is not null
        && review.ReviewedBy == by.Id
        && review.Responsible == Person
        && review.IsTechnique == IsTechnique
        && review.Found == Words;

    public Words Words => new(Found?.Trim() ?? "");

    /// <summary>What no rule speaks of; each with its field.</summary>
    public IEnumerable<(string Field, string Words)> Wrong(bool isCritical, Func<PersonId, bool> isHere)
    {
        if (Responsible != Nobody && (Person is not { } person || !isHere(person)))
            yield return ("Form.Responsible", "Choose who was responsible, or nobody.");
        if (isCritical && Person is not null && string.IsNullOrEmpty(Technique))
            yield return ("Form.Technique", "Choose whether technique contributed.");
        if (Found?.Length > MostLetters)
            yield return ("Form.Found", $"Write at most {MostLetters} letters here.");
    }
}

/// <summary>The page on which the owner reviews an incident.</summary>
public sealed record ReviewView(
    string Heading,
    string Title,
    string Groomed,
    string GroomHref,
    string ComplaintHref,
    IReadOnlyList<(string Name, string Value)> Told,
    string? Reviewed,
    IReadOnlyList<string> Findings,
    IReadOnlyList<Pick> People,
    IReadOnlyList<Pick> Technique,
    Outcome Outcome
)
{
    public static ReviewView Of(OneGroom one, IncidentStory told, IReadOnlyList<Person> here, Outcome outcome)
    {
        var incident = told.Incident;
        var names = one.Names;
        return new(
            $"{Say.Capital(Say.Word(incident.Kind))}, {Say.Word(incident.Severity)}: {(told.Review is null ? "not reviewed yet" : "reviewed")}",
            one.Title,
            one.Groomed,
            Paths.Groom(one.Groom.Id.Value),
            Paths.Complaint(one.Groom.Id.Value),
            [.. Lines(incident, names)],
            told.Review is { } review
                ? $"Reviewed by {names.Of(review.ReviewedBy)} at {names.Time.At(review.ReviewedAt)}: {review.Found.Text}"
                : null,
            told.Review is { } found ? [Say.Finding(found.Responsible, found.IsTechnique, incident.IsCritical, names)] : [],
            [.. PeopleOf(one.Groom, here, names), new Pick(ReviewForm.Nobody, "Nobody")],
            incident.IsCritical
                ? [new Pick(bool.TrueString, "Technique contributed"), new Pick(bool.FalseString, "It did not")]
                : [],
            outcome
        );
    }

    public static Outcome OutcomeOf(ReviewForm form, bool isCritical, IReadOnlyList<Foreseen> foreseen, Names names) =>
        form.IsChosen || (!isCritical && form.Person is not null)
            ? new Outcome(
                WillOf(form, isCritical, names),
                [Say.Finding(form.Person, form.IsTechnique, isCritical, names), .. Say.Follows(foreseen, names)],
                Effect.All(foreseen, names)
            )
            : new Outcome(
                "Choose who was responsible",
                isCritical
                    ?
                    [
                        "If technique contributed, the person walks the whole row of these skills again and you sign anew.",
                        "If it did not, it counts as one groom that needed fixing, and you or a deputy lift the stop.",
                        "If nobody was responsible, it counts for nobody and the stops end.",
                    ]
                    : ["It was not critical: the review is kept, and no row and no clearance changes."],
                []
            );

    private static string WillOf(ReviewForm form, bool isCritical, Names names) =>
        (form.Person, form.IsTechnique, isCritical) switch
        {
            (_, _, false) => "Kept; nothing else changes",
            (null, _, _) => "Counts for nobody; the stops end",
            ({ } person, true, _) => $"{names.Of(person)}: the whole way again",
            ({ } person, false, _) => $"{names.Of(person)}: one that needed fixing",
        };

    private static IEnumerable<(string, string)> Lines(Incident incident, Names names)
    {
        yield return ("Reported", $"by {names.Of(incident.ReportedBy)}, {names.Time.At(incident.ReportedAt)}");
        yield return ("Noticed", names.Time.At(incident.NoticedAt));
        yield return ("Grooming", names.Of(incident.Person));
        yield return ("Where", Say.Word(incident.Site));
        if (!incident.During.IsEmpty)
            yield return ("During", Counts.And([.. incident.During.Select(names.Of)]));
        yield return ("Vet", Say.Word(incident.Vet));
        yield return ("What happened", incident.WhatHappened.Text ?? "");
        if (!incident.WhatWasDone.IsEmpty)
            yield return ("What was done", incident.WhatWasDone.Text);
    }

    // Whoever groomed stands first; whoever only had the charge may be named as well.
    private static IEnumerable<Pick> PeopleOf(Groom groom, IReadOnlyList<Person> here, Names names) =>
        groom
            .Doers.Concat(groom.Watcher is { } watcher ? [watcher] : [])
            .Concat(here.Select(person => person.Id))
            .Distinct()
            .Select(person => new Pick(
                person.Value.ToString(),
                names.Of(person),
                groom.Doers.Contains(person) ? "groomed"
                    : groom.Watcher == person ? "watched"
                    : null
            ));
}
