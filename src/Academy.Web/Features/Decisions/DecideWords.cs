using Academy.Competence;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Decisions;

/// <summary>The sentences of the owner's pages that are not a rule's.</summary>
internal static class DecideWords
{
    /// <summary>"2 people wait for your decision, and 1 incident for its review".</summary>
    public static string Heading(int ready, Waiting waiting)
    {
        var parts = new[]
        {
            ready == 0 ? null : $"{Counts.Of(ready, "person waits", "people wait")} for your decision",
            waiting.Reviews.Count == 0
                ? null
                : $"{Counts.Of(waiting.Reviews.Count, "incident waits", "incidents wait")} for review",
            waiting.Disputes.Count == 0
                ? null
                : $"{Counts.Of(waiting.Disputes.Count, "dispute waits", "disputes wait")} for an answer",
        };
        var said = parts.OfType<string>().ToList();
        return said.Count == 0 ? "Nobody waits for your decision" : Counts.And(said);
    }

    /// <summary>"19 of the last 20 suited; 4 breeds; Rosa 11, Dora 9".</summary>
    public static string Record(Standing standing, Names names)
    {
        var last = standing.Tally.Last;
        var seniors = last.Where(groom => groom.Senior is not null)
            .CountBy(groom => groom.Senior!.Value)
            .OrderByDescending(one => one.Value)
            .Select(one => $"{names.Of(one.Key)} {one.Value}");
        return last.IsEmpty
            ? "modules only"
            : string.Join(
                "; ",
                new[]
                {
                    Counts.Suited(last.Count(groom => groom.Verdict == Verdict.Suitable), last.Count),
                    Counts.Of(standing.Tally.BreedsSuitable, "breed"),
                    string.Join(", ", seniors),
                }.Where(part => part.Length > 0)
            );
    }

    public static string Stuck(Standing standing) =>
        standing.Findings.OfType<PointsFound>().First() is var points
            ? $"{Counts.OutOf(points.Have, points.Need)} marks after {points.RatedOnRow} rated grooms: time to talk it over."
            : "";

    public static DecideLink Link(OpenReview review, Names names) =>
        new(
            $"{Say.Capital(Say.Word(review.Kind))}: {review.Dog}",
            $"{names.Of(new PersonId(review.Person))}, reported {names.Time.Ago(review.ReportedAt)}",
            Paths.Review(review.Incident)
        );

    public static DecideLink Link(OpenDispute dispute, Names names) =>
        new(
            $"{names.Of(new PersonId(dispute.By))} disputes the sign-off of {dispute.Dog}",
            names.Time.Ago(dispute.At),
            Paths.Dispute(dispute.SignOff)
        );

    public static DecideLink Link(FlaggedGroom flagged, Names names) =>
        new(
            $"{names.Of(new PersonId(flagged.Person))}: {flagged.Dog}",
            $"{Say.Capital(Counts.And([.. flagged.Skills.Split(',').Select(code => names.Of(new SkillCode(code)))]))}, {names.Time.Date(names.Time.DayOf(flagged.StartedAt))}",
            Paths.Flag(flagged.Groom, flagged.Person)
        );
}
