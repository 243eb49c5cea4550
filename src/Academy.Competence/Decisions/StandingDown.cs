using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Standings;

namespace Academy.Competence.Decisions;

/// <summary>Stopping a clearance and lifting the stop, by the owner or a named deputy.</summary>
public static class StandingDown
{
    /// <summary>Stops a clearance from now on.</summary>
    public static Decision Stop(DecisionId id, Standing standing, Person by, Words reason, DateTimeOffset now)
    {
        return Decision.Of(Against(), new StoodDown(id, standing.Person, standing.Skill, now, reason));

        IEnumerable<Reason> Against()
        {
            if (!by.MayStandDown)
                yield return new OwnerOrDeputyOnly();
            if (standing.Tally is { Clearance: null } or { StandDown: not null })
                yield return new NothingToStop(standing.Skill);
            if (reason.IsEmpty)
                yield return new WordsNeeded(WordsFor.StandDown);
        }
    }

    /// <summary>Lifts a stop: not over an open review, and not where technique contributed (then the row is walked from the beginning).</summary>
    public static Decision Lift(DecisionId id, Standing standing, Person by, Words reason, DateTimeOffset now)
    {
        return Decision.Of(Against(), new StandDownLifted(id, standing.Person, standing.Skill, now, reason));

        IEnumerable<Reason> Against()
        {
            if (!by.MayStandDown)
                yield return new OwnerOrDeputyOnly();
            if (by.Id == standing.Person && by.Role != Role.Owner)
                yield return new OwnWork();
            if (standing.Tally.StandDown is null)
                yield return new NotStoodDown(standing.Skill);
            if (standing.Tally.OpenReviews > 0)
                yield return new ReviewComesFirst(standing.Skill);
            if (standing.Tally.StandDown is { IsTechnique: true })
                yield return new TechniqueContributed(standing.Skill);
            if (reason.IsEmpty)
                yield return new WordsNeeded(WordsFor.Lift);
        }
    }
}
