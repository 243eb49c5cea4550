using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.Heat;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Competence.DogChecks;

/// <summary>One dog and the work agreed for it.</summary>
/// <param name="Dog">The dog, or one described on the spot.</param>
/// <param name="Techniques">The techniques booked.</param>
/// <param name="IsPeltedNearFolds">Whether the coat is pelted near skin folds.</param>
/// <param name="HasBreathingTrouble">Loud or laboured breathing at rest.</param>
/// <param name="MayVomitOrIsHot">Whether it is overheated or likely to vomit.</param>
public sealed record DogAsked(
    Dog Dog,
    Listed<SkillCode> Techniques,
    bool IsPeltedNearFolds = false,
    bool HasBreathingTrouble = false,
    bool MayVomitOrIsHot = false
);

/// <summary>What the check says of one person.</summary>
public enum Place
{
    /// <summary>May, alone.</summary>
    Alone,

    /// <summary>May, with somebody beside.</summary>
    Beside,

    /// <summary>Not this dog, now.</summary>
    Not,
}

/// <summary>One person's answer, with every reason.</summary>
/// <param name="Person">Who.</param>
/// <param name="Place">Alone, beside, not.</param>
/// <param name="Reasons">What is missing; empty for <see cref="Place.Alone"/>.</param>
/// <param name="With">Who may stand beside; empty unless <see cref="Place.Beside"/>.</param>
public sealed record PersonAnswer(PersonId Person, Place Place, Listed<Reason> Reasons, Listed<PersonId> With);

/// <summary>The whole answer: absolute rules first, then what is unknown, then person by person.</summary>
/// <param name="Asked">The skills the dog asks for.</param>
/// <param name="Nobody">Why nobody may, whatever their standing: no clearance covers it.</param>
/// <param name="TwoPeople">Why it takes two people, one of them a senior.</param>
/// <param name="Unknown">What is not known and must be said first: unknown means no.</param>
/// <param name="Cautions">What to mind all the same.</param>
/// <param name="People">Everybody who works here, those who are in first.</param>
public sealed record DogCheckAnswer(
    Listed<SkillCode> Asked,
    Listed<Reason> Nobody,
    Listed<Reason> TwoPeople,
    Listed<Reason> Unknown,
    Listed<Reason> Cautions,
    Listed<PersonAnswer> People
)
{
    /// <summary>Who may, alone.</summary>
    public IEnumerable<PersonAnswer> Alone => People.Where(one => one.Place == Place.Alone);
}

/// <summary>Who may groom this dog, alone, now; who only with whom beside; who not, and why.</summary>
public static class DogCheck
{
    private static readonly Listed<SkillCode> NeverEnclosed =
    [
        SkillBook.FlatFaced,
        SkillBook.Elderly,
        SkillBook.VeryYoung,
        SkillBook.Overweight,
        SkillBook.Heart,
    ];

    private static readonly Listed<SkillCode> TwoPeople =
    [
        SkillBook.Seizures,
        SkillBook.Heart,
        SkillBook.BiteHistory,
        SkillBook.Corded,
    ];

    /// <summary>The answer at this moment.</summary>
    /// <param name="asked">The dog and its work.</param>
    /// <param name="team">Everybody's standings at this moment.</param>
    /// <param name="isIn">Who is ticked in.</param>
    /// <param name="newest">The newest room reading.</param>
    /// <param name="house">House rules.</param>
    /// <param name="now">The moment.</param>
    /// <param name="zone">The salon's zone.</param>
    public static DogCheckAnswer Of(
        DogAsked asked,
        Team team,
        IReadOnlySet<PersonId> isIn,
        RoomReading? newest,
        HouseRules house,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        var hazards = asked.Dog.HazardsOn(SalonDay.Of(now, zone), house);
        var isAtRisk = RoomHeat.IsAtRisk(hazards);
        var heat = RoomHeat.StateOf(newest, isAtRisk, house, now, zone);
        var named = NamedBy(asked, hazards, heat);
        var skills = team.Skills.Select(skill => skill.Code).Where(named.Contains).ToListed();
        var nobody = AgainstAnybody(asked, hazards, heat, newest, isAtRisk, house).ToListed();
        var two = ForTwo(asked, hazards).ToListed();
        var unknown = UnknownOf(asked, named, team, heat, newest, isAtRisk).ToListed();
        var cautions = CautionsOf(asked, hazards, heat, newest, isAtRisk, house).ToListed();

        var room = new Room(team, isIn, asked.Dog, heat, newest);
        var people = team
            .People.Select(person => Answer(person, skills, room, two, blocked: !nobody.IsEmpty || !unknown.IsEmpty))
            .OrderBy(one => isIn.Contains(one.Person) ? 0 : 1)
            .ThenBy(one => one.Place);
        return new DogCheckAnswer(skills, nobody, two, unknown, cautions, people.ToListed());
    }

    /// <summary>Whether somebody holds this skill for this dog by herself: alone in it, and no limit of hers in the way.</summary>
    internal static bool Holds(
        PersonId person,
        SkillCode skill,
        Dog dog,
        Team team,
        IReadOnlySet<PersonId> isIn,
        HeatState heat
    ) => !Lacks(person, skill, new Room(team, isIn, dog, heat, Newest: null)).Any();

    /// <summary>Whether this skill takes two people, one of them a senior, whatever anybody's standing.</summary>
    internal static bool TakesTwo(SkillCode skill) => TwoPeople.Contains(skill);

    /// <summary>The skills a dog asks for: its coats, the techniques booked, its hazards, and the day's.</summary>
    private static Listed<SkillCode> NamedBy(DogAsked asked, Listed<SkillCode> hazards, HeatState heat) =>
        CoatsOf(asked.Dog)
            .Concat(asked.Techniques)
            .Concat(hazards)
            .Concat(heat == HeatState.Hot ? [SkillBook.HotDay] : [])
            .Distinct()
            .ToListed();

    private static IEnumerable<SkillCode> CoatsOf(Dog dog) => new[] { dog.Coat, dog.SecondCoat }.OfType<SkillCode>();

    private static IEnumerable<Reason> AgainstAnybody(
        DogAsked asked,
        Listed<SkillCode> hazards,
        HeatState heat,
        RoomReading? newest,
        bool isAtRisk,
        HouseRules house
    )
    {
        if (asked.HasBreathingTrouble)
            yield return new BreathingTrouble();
        if (heat == HeatState.Stop)
            yield return new AtTheStopLine(
                newest!.TenthsC,
                isAtRisk ? house.StopForAtRiskFromTenthsC : house.StopFromTenthsC,
                isAtRisk
            );
        if (asked.Techniques.Contains(SkillBook.CabinetDrying))
            foreach (var hazard in hazards.Where(NeverEnclosed.Contains))
                yield return new NeverEnclosedDrying(hazard);
        if (hazards.Contains(SkillBook.Muzzled) && (asked.HasBreathingTrouble || asked.MayVomitOrIsHot))
            yield return new NeverMuzzled();
    }

    private static IEnumerable<Reason> ForTwo(DogAsked asked, Listed<SkillCode> hazards)
    {
        foreach (var skill in CoatsOf(asked.Dog).Concat(hazards).Where(TwoPeople.Contains).Distinct())
            yield return new TwoPeopleFor(skill);
        if (asked.IsPeltedNearFolds)
            yield return new TwoPeopleForPeltedFolds();
    }

    // A retired skill is asked of no dog: a dog whose coat or whose whole work is retired asks for nothing, and that is unknown.
    private static IEnumerable<Reason> UnknownOf(
        DogAsked asked,
        Listed<SkillCode> named,
        Team team,
        HeatState heat,
        RoomReading? newest,
        bool isAtRisk
    )
    {
        if (CoatsOf(asked.Dog).All(team.Retired.Contains))
            yield return new NoCoatChosen();
        if (asked.Techniques.All(team.Retired.Contains))
            yield return new NoWorkAgreed();
        if (!asked.Dog.IsAgeKnown)
            yield return new AgeUnknown();
        foreach (var skill in named.Where(skill => !IsKnown(skill)))
            yield return new UnknownSkill(skill);
        if (heat == HeatState.Unknown && isAtRisk)
            yield return new ReadingNeeded(newest?.At);

        bool IsKnown(SkillCode skill) => team.Retired.Contains(skill) || team.Skills.Any(known => known.Code == skill);
    }

    private static IEnumerable<Reason> CautionsOf(
        DogAsked asked,
        Listed<SkillCode> hazards,
        HeatState heat,
        RoomReading? newest,
        bool isAtRisk,
        HouseRules house
    )
    {
        if (heat == HeatState.Hot)
            yield return new HotForThisDog(newest!.TenthsC, isAtRisk);
        if (heat == HeatState.Unknown && !isAtRisk)
            yield return new ReadingNeeded(newest?.At);
        if (asked.Dog.WeightKg is not { } kilos || kilos > house.LiftAloneUpToKg)
            yield return new LiftTogether(asked.Dog.WeightKg, house.LiftAloneUpToKg);
        if (hazards.Contains(SkillBook.Muzzled) && hazards.Contains(SkillBook.FlatFaced))
            yield return new NeverASleeve();
    }

    private sealed record Room(Team Team, IReadOnlySet<PersonId> IsIn, Dog Dog, HeatState Heat, RoomReading? Newest)
    {
        public bool HasOtherSeniorIn(PersonId person) => SeniorsIn.Any(senior => senior.Id != person);

        public IEnumerable<Person> SeniorsIn => Team.People.Where(person => person.MayJudgeByRole && IsIn.Contains(person.Id));
    }

    private static PersonAnswer Answer(Person person, Listed<SkillCode> skills, Room room, Listed<Reason> two, bool blocked)
    {
        var lacking = skills
            .Select(skill => (Skill: skill, Lacks: Lacks(person.Id, skill, room).ToListed()))
            .Where(one => !one.Lacks.IsEmpty)
            .ToList();
        var reasons = lacking.SelectMany(one => one.Lacks).Distinct().ToListed();
        if (blocked)
            return new(person.Id, Place.Not, reasons, []);
        if (!room.IsIn.Contains(person.Id))
            return new(person.Id, Place.Not, Listed.Of<Reason>([new NotInToday(), .. reasons]), []);
        if (reasons.IsEmpty && two.IsEmpty)
            return new(person.Id, Place.Alone, [], []);

        var unreviewed = skills
            .Where(skill => room.Team[person.Id, skill] is { Tally.OpenReviews: > 0 })
            .Select(skill => (Reason)new NotUntilReviewed(skill))
            .ToListed();
        if (!unreviewed.IsEmpty)
            return new(person.Id, Place.Not, unreviewed.Concat(reasons).ToListed(), []);

        var beside = Beside(person, [.. lacking.Select(one => one.Skill)], room).Select(one => one.Id).ToListed();
        return beside.IsEmpty
            ? new(person.Id, Place.Not, reasons.With(new NobodyToStandBeside()), [])
            : new(person.Id, Place.Beside, reasons, beside);
    }

    // Two people, one of them a senior: beside a senior who lacks nothing anybody will do, otherwise it takes one who holds what lacks.
    private static IEnumerable<Person> Beside(Person person, Listed<SkillCode> lacking, Room room) =>
        lacking.IsEmpty && person.MayJudgeByRole
            ? room.Team.People.Where(other => other.Id != person.Id && room.IsIn.Contains(other.Id))
            : room.SeniorsIn.Where(senior => senior.Id != person.Id && lacking.All(skill => Holds(senior, skill, room)));

    private static bool Holds(Person senior, SkillCode skill, Room room) => !Lacks(senior.Id, skill, room).Any();

    private static IEnumerable<Reason> Lacks(PersonId person, SkillCode skill, Room room)
    {
        var standing = room.Team[person, skill];
        if (standing is not { Kind: StandingKind.Alone })
        {
            var points = standing?.Findings.OfType<PointsFound>().FirstOrDefault();
            yield return new NotAloneIn(skill, standing?.Kind ?? StandingKind.Learning, points?.Have, points?.Need);
            yield break;
        }

        var limits = standing.Limits;
        if (standing.IsWatched)
            yield return new Watched(skill, standing.Tally.WatchedYet);
        if (limits.NotOnHotDays && room.Heat == HeatState.Hot)
            yield return new NotOnHotDays(skill);
        if (limits.NotOnHotDays && room.Heat == HeatState.Unknown)
            yield return new ReadingNeeded(room.Newest?.At);
        if (limits.UpToKg is { } most)
        {
            if (room.Dog.WeightKg is not { } kilos)
                yield return new WeightUnknown(skill, most);
            else if (kilos > most)
                yield return new TooHeavy(skill, kilos, most);
        }
        if (limits.OnlyWithSeniorIn && !room.HasOtherSeniorIn(person))
            yield return new NoSeniorIn(skill);
    }
}
