using System.Diagnostics;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Competence.Thresholds;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Boards;

/// <summary>The sentences of the why-page that are not a rule's.</summary>
internal static class WhyWords
{
    /// <summary>"Pim, wool: learning, 11 of 17".</summary>
    public static string Heading(Standing standing, Names names) =>
        Say.Heading(standing, names)
        + (
            standing.Kind is StandingKind.Learning or StandingKind.Lapsed or StandingKind.CheckAgain
            && CellNote.HasBegun(standing)
            && standing.Findings.OfType<PointsFound>().FirstOrDefault() is { } points
                ? $", {Counts.OutOf(points.Have, points.Need)}"
                : ""
        );

    /// <summary>What the standing means on the floor, today.</summary>
    public static string Lead(Standing standing, Person person, Names names) =>
        standing.Kind switch
        {
            _ when standing.Tally.OpenReviews > 0 =>
                $"An incident waits for the owner’s review. Until then {person.Name} does not do this, not even with somebody beside.",
            StandingKind.Learning => $"{person.Name} does this with a senior beside.",
            StandingKind.Ready => $"The rules hold. {person.Name} does this with a senior beside until the owner decides.",
            StandingKind.Alone when standing.IsWatched =>
                $"{person.Name} may do this alone, and a senior stands beside the next ones.",
            StandingKind.Alone => Alone(standing, person, names),
            StandingKind.CheckAgain =>
                $"{person.Name} does this with a senior beside until the row is full again and the owner signs.",
            StandingKind.Lapsed => $"{person.Name} does this with a senior beside until what is missing below is there again.",
            StandingKind.StoodDown => $"{person.Name} does not do this alone. It is stopped until it is lifted or walked back.",
            _ => throw new UnreachableException(),
        };

    /// <summary>"As of 14:05 on Tuesday 3 March, under version 3 of the rules, which holds from 2 June."</summary>
    public static string AsOf(Threshold threshold, SalonTime time) =>
        $"As of {time.Clock(time.Now)} on {time.Day(time.Now)} {time.Today.Year}, under version {threshold.Version} of the rules, from {time.Date(threshold.FromDay)}.";

    public static string Older(string here, PathGroom last, SalonTime? past)
    {
        var at = past is null ? "?" : $"{Moment.Ask(past.Now, past.Zone)}&";
        return $"{here}{at}after={new ListPlace(last.At, last.Groom)}#grooms";
    }

    /// <summary>The skill that a decision is about.</summary>
    public static SkillCode? SkillOf(Fact fact) =>
        fact switch
        {
            ExperienceDeclared told => told.Skill,
            WorkElsewhere told => told.Skill,
            ClearanceGiven given => given.Skill,
            ClearanceRefused refused => refused.Skill,
            StoodDown stopped => stopped.Skill,
            StandDownLifted lifted => lifted.Skill,
            _ => null,
        };

    public static string? WordsOf(Fact fact)
    {
        var words = fact switch
        {
            ExperienceDeclared told => told.Reason,
            WorkElsewhere told => told.Source,
            ClearanceGiven given => given.Reason,
            ClearanceRefused refused => refused.Says,
            StoodDown stopped => stopped.Reason,
            StandDownLifted lifted => lifted.Reason,
            _ => Words.None,
        };
        return words.IsEmpty ? null : words.Text;
    }

    public static string Stopped(PathStop stop) =>
        $"Stopped by rule after an incident: {Say.Word(stop.What)}. "
        + (
            stop.IsReviewOpen ? "It waits for its review."
            : stop.IsTechnique ? "The review found that technique contributed."
            : "The review found that technique did not contribute."
        );

    private static string Alone(Standing standing, Person person, Names names)
    {
        var limits = Say.Limits(standing.Limits, names);
        var within = limits.Count == 0 ? "" : $", {string.Join(", ", limits)}";
        var left = standing.LastDay() is { } last ? $" It holds until {names.Time.Date(last)} if nothing more happens." : "";
        return $"{person.Name} may do this alone{within}.{left}";
    }
}
