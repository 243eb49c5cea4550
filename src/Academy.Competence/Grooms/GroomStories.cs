using Academy.Competence.Facts;
using Academy.Competence.Incidents;

namespace Academy.Competence.Grooms;

/// <summary>A dispute over a sign-off and its answer.</summary>
/// <param name="SignOff">The sign-off disputed.</param>
/// <param name="By">Who disputes it.</param>
/// <param name="At">When.</param>
/// <param name="Says">Words.</param>
/// <param name="Answer">The owner's answer; null while there is none.</param>
public sealed record DisputeStory(SignOffId SignOff, PersonId By, DateTimeOffset At, Words Says, DisputeAnswered? Answer);

/// <summary>A groom that was started and not told yet.</summary>
public sealed record StartedGroom(GroomId Id, DogId Dog, PersonId By, PersonId? Watcher, DateTimeOffset At, bool IsAbandoned);

/// <summary>Folds what was said about one groom.</summary>
public static class GroomStories
{
    /// <summary>The story of one groom from its facts in the order of the ledger; null while it was started only, or abandoned.</summary>
    public static GroomStory? Of(IEnumerable<Recorded> facts) => facts.Aggregate((GroomStory?)null, After);

    /// <summary>Its start, where it was started before it was told; null where it was not.</summary>
    public static StartedGroom? StartOf(IEnumerable<Recorded> facts) =>
        facts.Aggregate(
            (StartedGroom?)null,
            (start, told) =>
                told.Fact switch
                {
                    GroomStarted began => new(began.Groom, began.Dog, began.By, began.Watcher, began.At, IsAbandoned: false),
                    GroomAbandoned when start is not null => start with { IsAbandoned = true },
                    _ => start,
                }
        );

    /// <summary>Every dispute with its answer, oldest first.</summary>
    public static Listed<DisputeStory> DisputesOf(IReadOnlyCollection<Recorded> facts) =>
        facts
            .Where(told => told.Fact is SignOffDisputed)
            .Select(told => (At: told.RecordedAt, Fact: (SignOffDisputed)told.Fact))
            .Select(told => new DisputeStory(
                told.Fact.SignOff,
                told.Fact.By,
                told.At,
                told.Fact.Says,
                facts
                    .Select(one => one.Fact)
                    .OfType<DisputeAnswered>()
                    .FirstOrDefault(answer => answer.SignOff == told.Fact.SignOff)
            ))
            .ToListed();

    /// <summary>The story after one more fact about the groom; null while it has not been told.</summary>
    public static GroomStory? After(GroomStory? story, Recorded told) =>
        (story, told.Fact) switch
        {
            (null, GroomLogged logged) => GroomStory.Of(logged.Groom, told.RecordedAt),
            ({ }, GroomLogged logged) => story with { Groom = logged.Groom },
            ({ }, SignedOff signed) => story with { SignOffs = story.SignOffs.With(signed.SignOff) },
            ({ }, LateSignOffAdmitted admitted) => story with { Admitted = story.Admitted.With(admitted.SignOff) },
            ({ }, DisputeAnswered { IsOverturned: true } answered) => story with
            {
                Overturned = story.Overturned.With(answered.SignOff),
            },
            ({ }, IncidentReported reported) => story with
            {
                Incidents = story.Incidents.With(new(reported.Incident, Review: null)),
            },
            ({ }, IncidentReviewed reviewed) => story with { Incidents = Review(story.Incidents, reviewed.Review) },
            ({ }, ComplaintUpheld upheld) => story with
            {
                Complaints = story.Complaints.With(new(upheld.Person, told.RecordedAt, upheld.Skills)),
            },
            _ => story,
        };

    private static Listed<IncidentStory> Review(Listed<IncidentStory> incidents, IncidentReview review) =>
        incidents.Select(one => one.Incident.Id == review.Incident ? one with { Review = review } : one).ToListed();
}
