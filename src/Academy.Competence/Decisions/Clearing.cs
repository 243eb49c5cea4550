using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Standings;

namespace Academy.Competence.Decisions;

/// <summary>One clearance asked for under a signature.</summary>
/// <param name="Id">The id of the decision to be.</param>
/// <param name="Standing">Where the person stands at this moment.</param>
/// <param name="Limits">What it is limited to.</param>
public sealed record ClearanceAsked(DecisionId Id, Standing Standing, Limits Limits);

/// <summary>The owner's decisions. Nothing becomes alone by itself: the rules recommend, the owner decides, with a signature.</summary>
public static class Clearing
{
    /// <summary>
    /// One signature over one or several clearances of one person: all of them, or every reason against. For a skill in which she
    /// is alone already it can only change the limits.
    /// </summary>
    /// <param name="signature">The signature's id.</param>
    /// <param name="asked">What is asked.</param>
    /// <param name="person">Who may then.</param>
    /// <param name="owner">Who signs.</param>
    /// <param name="against">Whether to decide against the rules where they are not met.</param>
    /// <param name="reason">The written reason for that.</param>
    /// <param name="now">When.</param>
    /// <param name="zone">The salon's zone.</param>
    public static Decision Clear(
        DecisionId signature,
        Listed<ClearanceAsked> asked,
        Person person,
        Person owner,
        bool against,
        Words reason,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        var today = SalonDay.Of(now, zone);
        var reasons = AgainstSigning(asked, person, owner, today)
            .Concat(asked.SelectMany(one => AgainstOne(one, person, against, today)))
            .Concat(against && reason.IsEmpty ? [new WordsNeeded(WordsFor.Exception)] : []);
        return Decision.Of(reasons, () => asked.Select(Write).ToListed());

        Fact Write(ClearanceAsked one) =>
            new ClearanceGiven(
                one.Id,
                signature,
                person.Id,
                one.Standing.Skill,
                now,
                one.Standing.ThresholdVersion,
                one.Limits,
                IsException: one.Standing.Kind is not (StandingKind.Ready or StandingKind.Alone),
                reason
            );
    }

    /// <summary>The owner says not yet, in words to the person.</summary>
    public static Decision Refuse(DecisionId id, Person person, SkillCode skill, Person owner, Words says)
    {
        return Decision.Of(Against(), new ClearanceRefused(id, person.Id, skill, says));

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (says.IsEmpty)
                yield return new WordsNeeded(WordsFor.Refusal);
        }
    }

    /// <summary>
    /// The owner declares experience: for whoever has no path in a skill yet, the first people of a salon above all, and for
    /// anybody where nobody is alone in it; the second is an exception, and the board shows it.
    /// </summary>
    /// <param name="id">The id of the decision to be.</param>
    /// <param name="standing">Where the person stands at this moment.</param>
    /// <param name="isSomebodyAlone">Whether anybody who works here is alone in the skill.</param>
    /// <param name="person">Who has the experience.</param>
    /// <param name="owner">Who declares it.</param>
    /// <param name="on">The day from which it counts, and on which it stands for the grooms that recency asks.</param>
    /// <param name="reason">What the experience is.</param>
    /// <param name="now">When.</param>
    /// <param name="zone">The salon's zone.</param>
    public static Decision Declare(
        DecisionId id,
        Standing standing,
        bool isSomebodyAlone,
        Person person,
        Person owner,
        DateOnly on,
        Words reason,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        return Decision.Of(
            Against(),
            new ExperienceDeclared(id, person.Id, standing.Skill, on, standing.ThresholdVersion, reason)
        );

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (standing.Person != person.Id)
                yield return new NotHerStanding(standing.Skill);
            if (!person.WorksOn(SalonDay.Of(now, zone)))
                yield return new NotWorkingHere(person.Id);
            if (standing.Kind == StandingKind.Alone)
                yield return new AloneAlready(standing.Skill);
            foreach (var stop in Stops(standing))
                yield return stop;
            if (standing.Tally.HasPath && isSomebodyAlone && standing.Kind != StandingKind.Alone)
                yield return new DeclaredAlready(standing.Skill);
            if (on > SalonDay.Of(now, zone))
                yield return new InTheFuture(SalonDay.End(on.AddDays(-1), zone));
            if (reason.IsEmpty)
                yield return new WordsNeeded(WordsFor.Declaration);
        }
    }

    /// <summary>Work elsewhere, with its source: it counts for recency only.</summary>
    public static Decision WorkedElsewhere(
        DecisionId id,
        Person person,
        SkillCode skill,
        Person owner,
        DateOnly on,
        int grooms,
        Words source,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        return Decision.Of(
            Against(),
            () =>
                [
                    new WorkElsewhere(
                        id,
                        person.Id,
                        skill,
                        on,
                        Math.Clamp(grooms, 1, Thresholds.Threshold.MostRecentGrooms),
                        source
                    ),
                ]
        );

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (on > SalonDay.Of(now, zone))
                yield return new InTheFuture(SalonDay.End(on.AddDays(-1), zone));
            if (source.IsEmpty)
                yield return new WordsNeeded(WordsFor.Source);
        }
    }

    private static IEnumerable<Reason> AgainstSigning(Listed<ClearanceAsked> asked, Person person, Person owner, DateOnly today)
    {
        if (owner.Role != Role.Owner)
            yield return new OwnerOnly();
        if (!person.WorksOn(today))
            yield return new NotWorkingHere(person.Id);
        if (asked.IsEmpty)
            yield return new NothingChosen();
    }

    private static IEnumerable<Reason> AgainstOne(ClearanceAsked one, Person person, bool against, DateOnly today)
    {
        var standing = one.Standing;
        if (standing.Person != person.Id)
            yield return new NotHerStanding(standing.Skill);
        if (standing.Kind == StandingKind.Alone && standing.Tally.Clearance?.Limits == one.Limits)
            yield return new AloneAlready(standing.Skill);
        foreach (var stop in Stops(standing))
            yield return stop;
        if (one.Limits.Until < today)
            yield return new LimitInThePast(one.Limits.Until!.Value);
        if (!against && standing.Kind is StandingKind.Learning or StandingKind.Lapsed or StandingKind.CheckAgain)
            foreach (var gap in standing.Gaps.Concat(standing.Why).Where(gap => gap is not SkillTurnedOff).Distinct())
                yield return new NotReady(standing.Skill, gap);
    }

    // What no decision goes over, not even one against the rules.
    private static IEnumerable<Reason> Stops(Standing standing)
    {
        if (standing.Tally.OpenReviews > 0)
            yield return new ReviewComesFirst(standing.Skill);
        foreach (var gap in standing.Why.Where(gap => gap is SkillTurnedOff or StoodDownSince))
            if (standing.Kind != StandingKind.Ready)
                yield return new NotReady(standing.Skill, gap);
    }
}
