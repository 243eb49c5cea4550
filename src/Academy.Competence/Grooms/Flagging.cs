using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Facts;
using Academy.Competence.Heat;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Competence.Grooms;

/// <summary>What was known when a groom began.</summary>
/// <param name="Dog">The dog as it was known.</param>
/// <param name="Team">Everybody's standings of that moment.</param>
/// <param name="In">Who was ticked in on its day.</param>
/// <param name="House">House rules.</param>
/// <param name="Zone">The salon's zone.</param>
public sealed record KnownThen(Dog Dog, Team Team, IReadOnlySet<PersonId> In, HouseRules House, TimeZoneInfo Zone);

/// <summary>A groom told as done alone by somebody who was not alone for it.</summary>
/// <param name="Groom">The groom.</param>
/// <param name="Person">Who did it.</param>
/// <param name="At">When it was noticed: when the groom was told so.</param>
/// <param name="Skills">In what that person was not alone.</param>
/// <param name="Spoken">What the owner says was spoken; null while nothing was.</param>
/// <param name="SpokenBy">Who spoke.</param>
/// <param name="SpokenAt">When.</param>
public sealed record FlagStory(
    GroomId Groom,
    PersonId Person,
    DateTimeOffset At,
    Listed<SkillCode> Skills,
    Words Spoken = default,
    PersonId? SpokenBy = null,
    DateTimeOffset? SpokenAt = null
)
{
    /// <summary>Whether the owner has not spoken about it yet.</summary>
    public bool IsOpen => SpokenAt is null;
}

/// <summary>
/// Grooms told as done alone by somebody who was not alone for that dog. The log is never refused for it: it is kept as it was,
/// flagged, and the owner speaks about it.
/// </summary>
public static class Flagging
{
    /// <summary>
    /// Of what the dog asked for (its coats, the techniques this person did, the hazards of the dog and of the day): the skills
    /// in which she was not alone by what was known then, and nobody who judges them had a hand in it. None where a senior
    /// watched.
    /// </summary>
    /// <remarks>
    /// A limit in the way is as good as not alone: too heavy, a hot day, no senior in, a senior still to stand beside. So is a
    /// hazard that no clearance covers by itself, where nobody else was there. What follows from age, weight and breed counts
    /// whether it was ticked or not; a skill that the salon retired does not.
    /// </remarks>
    public static Listed<SkillCode> NotAloneIn(Groom told, PersonId doer, KnownThen then) =>
        told.Watcher is not null
            ? []
            : AskedOf(told, doer, then)
                .Where(skill => !then.Team.Retired.Contains(skill) && !IsInGoodHands(skill, told, doer, then))
                .ToListed();

    /// <summary>
    /// Whether the standings of another moment leave open what was known when it began: somebody lacks something, or holds it
    /// only since that day. Where they do not, nothing need be looked up.
    /// </summary>
    public static bool IsInDoubt(Groom told, KnownThen other)
    {
        var day = SalonDay.Of(told.StartedAt, other.Zone);
        return told.Watcher is null
            && told.Doers.Any(doer =>
                !NotAloneIn(told, doer, other).IsEmpty
                || AskedOf(told, doer, other).Any(skill => other.Team[doer, skill]?.Since >= day)
            );
    }

    /// <summary>What is flagged of a groom as told, where that is not what was flagged of it before.</summary>
    public static Decision Flag(Groom told, Listed<FlagStory> before, KnownThen then)
    {
        var people = told.Doers.Concat(before.Select(flag => flag.Person)).Distinct();
        return Decision.Of([], () => people.Select(Anew).Where(IsNews).ToListed<Fact>());

        GroomFlagged Anew(PersonId person) =>
            new(told.Id, person, told.Doers.Contains(person) ? NotAloneIn(told, person, then) : []);

        bool IsNews(GroomFlagged flagged) =>
            flagged.Skills != (before.FirstOrDefault(flag => flag.Person == flagged.Person)?.Skills ?? []);
    }

    /// <summary>The owner has spoken about it, and says in words what came of it.</summary>
    /// <param name="flag">What is flagged; null where nothing is.</param>
    /// <param name="owner">Who spoke.</param>
    /// <param name="says">What was spoken.</param>
    public static Decision SpeakAbout(FlagStory? flag, Person owner, Words says)
    {
        return Decision.Of(Against(), () => [new FlagSpokenAbout(flag!.Groom, flag.Person, says)]);

        IEnumerable<Reason> Against()
        {
            if (owner.Role != Role.Owner)
                yield return new OwnerOnly();
            if (flag is not { IsOpen: true })
                yield return new NothingToSpeakAbout();
            if (says.IsEmpty)
                yield return new WordsNeeded(WordsFor.SpokenAbout);
        }
    }

    /// <summary>What is flagged of one groom, by its facts in the order of the ledger; what was taken back is not.</summary>
    public static Listed<FlagStory> Of(IEnumerable<Recorded> facts) =>
        facts.Aggregate(new Dictionary<PersonId, FlagStory>(), After).Values.Where(flag => !flag.Skills.IsEmpty).ToListed();

    private static Dictionary<PersonId, FlagStory> After(Dictionary<PersonId, FlagStory> flags, Recorded told)
    {
        if (told.Fact is GroomFlagged flagged)
            flags[flagged.Person] = new(flagged.Groom, flagged.Person, told.RecordedAt, flagged.Skills);
        if (told.Fact is FlagSpokenAbout spoken && flags.TryGetValue(spoken.Person, out var flag))
            flags[spoken.Person] = flag with { Spoken = spoken.Says, SpokenBy = told.By, SpokenAt = told.RecordedAt };
        return flags;
    }

    // Coats and hazards are asked of whoever did the whole finish; where that was shared, of whoever logged it.
    private static IEnumerable<SkillCode> AskedOf(Groom told, PersonId doer, KnownThen then)
    {
        var hers = told.SkillsOf(doer);
        return (told.WholeFinishBy ?? told.By) == doer ? told.Coats.Concat(hers).Concat(HazardsOf(told, then)).Distinct() : hers;
    }

    private static Listed<SkillCode> HazardsOf(Groom told, KnownThen then)
    {
        var day = SalonDay.Of(told.StartedAt, then.Zone);
        var hazards = (then.Dog with { Hazards = told.Hazards }).HazardsOn(day, then.House);
        return HeatOf(told, hazards, then) == HeatState.Hot ? hazards.With(SkillBook.HotDay) : hazards;
    }

    private static HeatState HeatOf(Groom told, Listed<SkillCode> hazards, KnownThen then) =>
        hazards.Contains(SkillBook.HotDay)
        || RoomHeat.StateOf(told.Room, RoomHeat.IsAtRisk(hazards), then.House, told.EndedAt, then.Zone)
            is HeatState.Hot
                or HeatState.Stop
            ? HeatState.Hot
            : HeatState.Under;

    private static bool IsInGoodHands(SkillCode skill, Groom told, PersonId doer, KnownThen then)
    {
        var others = told.Doers.Where(other => other != doer).ToList();
        if (others.Any(other => Judges(other) && Holds(other)))
            return true;
        return Holds(doer) && (!DogCheck.TakesTwo(skill) || others.Any(other => Judges(doer) || Judges(other)));

        bool Judges(PersonId person) => then.Team.People.Any(one => one.Id == person && one.MayJudgeByRole);

        bool Holds(PersonId person) => Flagging.Holds(person, skill, told, then);
    }

    // Whoever grooms is in the building, ticked or not.
    private static bool Holds(PersonId person, SkillCode skill, Groom told, KnownThen then) =>
        DogCheck.Holds(
            person,
            skill,
            then.Dog,
            then.Team,
            then.In.Concat(told.Doers).ToHashSet(),
            HeatOf(told, HazardsOf(told, then), then)
        );
}
