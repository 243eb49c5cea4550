using Academy.Competence.Dogs;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Tests.Cast;

/// <summary>The invented salon of the rule book: its people, its dogs, and one day on which everything is asked.</summary>
internal static class TestSalon
{
    public static readonly TimeZoneInfo London = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");

    /// <summary>South of the equator: its clocks go forward in October and back in April.</summary>
    public static readonly TimeZoneInfo Hobart = TimeZoneInfo.FindSystemTimeZoneById("Australia/Hobart");

    /// <summary>A Monday in the season in which a day may be hot.</summary>
    public static readonly DateOnly Today = new(2026, 6, 15);

    /// <summary>Eleven in the morning by the salon's clock.</summary>
    public static readonly DateTimeOffset Now = new(2026, 6, 15, 10, 0, 0, TimeSpan.Zero);

    public static readonly HouseRules House = new();

    private static readonly DateOnly s_opened = new(2024, 1, 1);

    /// <summary>The owner. She can groom, and judges where she is alone.</summary>
    public static readonly Person Olga = new(PersonNumber(1), "Olga", Role.Owner, s_opened);

    /// <summary>A senior who may strip wire coats.</summary>
    public static readonly Person Rosa = new(PersonNumber(2), "Rosa", Role.Senior, s_opened);

    /// <summary>The second senior, and the owner's deputy.</summary>
    public static readonly Person Dora = new(PersonNumber(3), "Dora", Role.Senior, s_opened, IsDeputy: true);

    /// <summary>A junior who is nearly there.</summary>
    public static readonly Person Pim = new(PersonNumber(4), "Pim", Role.Junior, s_opened);

    /// <summary>Another junior; she does part of a groom now and then.</summary>
    public static readonly Person Mei = new(PersonNumber(5), "Mei", Role.Junior, s_opened);

    /// <summary>A junior under 18.</summary>
    public static readonly Person Uli = new(PersonNumber(6), "Uli", Role.Junior, s_opened, IsUnder18: true);

    /// <summary>A junior who left yesterday.</summary>
    public static readonly Person Gus = new(PersonNumber(7), "Gus", Role.Junior, s_opened, LeftOn: Today.AddDays(-1));

    /// <summary>A wire coat, four years old, nothing to mind.</summary>
    public static readonly Dog Biscuit = new(
        new(Number(101)),
        "Biscuit",
        "Border Terrier",
        SkillBook.Wire,
        SecondCoat: null,
        Hazards: [],
        BornOn: new(2022, 3, 1),
        AgeByLook.NotSaid,
        WeightKg: 7
    );

    /// <summary>A smooth coat with a flat face.</summary>
    public static readonly Dog Bean = Biscuit with
    {
        Id = new(Number(102)),
        Name = "Bean",
        Breed = "Boston Terrier",
        Coat = SkillBook.Smooth,
        Hazards = [SkillBook.FlatFaced],
    };

    /// <summary>A big dog with two coats.</summary>
    public static readonly Dog Otto = Biscuit with
    {
        Id = new(Number(103)),
        Name = "Otto",
        Breed = "Cross",
        Coat = SkillBook.Double,
        SecondCoat = SkillBook.Wool,
        WeightKg = 34,
    };

    /// <summary>Yesterday's groom: Pim stripped Biscuit from ten to twelve, and Rosa watched.</summary>
    public static readonly Groom StrippingBiscuit = new(
        new(Number(201)),
        Biscuit.Id,
        Pim.Id,
        Watcher: Rosa.Id,
        StartedAt: Now.AddDays(-1).AddHours(-1),
        EndedAt: Now.AddDays(-1).AddHours(1),
        Biscuit.Breed,
        SkillBook.Wire,
        SecondCoat: null,
        CoatCondition.CombedThrough,
        WholeFinishBy: Pim.Id,
        Parts: [new(SkillBook.Bath, Pim.Id), new(SkillBook.HandStripping, Pim.Id)],
        Blades: [],
        Hazards: [],
        Consents: [],
        Checks: [],
        Signs: [],
        Room: null,
        EndedEarly: false,
        Phrases: [],
        Words.None
    );

    public static readonly GroomStory Yesterday = GroomStory.Of(StrippingBiscuit, StrippingBiscuit.EndedAt);

    public static readonly SkillKinds Kinds = new(SkillBook.Defaults);

    /// <summary>The first days of the tests' paths are counted back from <see cref="Today"/>.</summary>
    public static DateOnly Ago(int days) => Today.AddDays(-days);

    public static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd");

    public static DateTimeOffset At(string moment) =>
        DateTimeOffset.ParseExact(moment, "yyyy-MM-dd HH:mmK", null, System.Globalization.DateTimeStyles.AssumeUniversal);

    public static Words Said(string words) => new(words);

    public static Guid Number(int number) => new(number, 0, 0, new byte[8]);

    public static PersonId PersonNumber(int number) => new(Number(number));

    public static DecisionId DecisionNumber(int number) => new(Number(number));

    public static SignOffId SignOffNumber(int number) => new(Number(number));

    public static Skill SkillOf(SkillCode code) => Kinds.Find(code)!;

    public static Threshold ThresholdOf(SkillCode code) => DefaultThresholds.For(code, s_opened);

    /// <summary>A senior with nothing wrong: everything met, and she stood by.</summary>
    public static SignOffDraft Met(Person subject) =>
        new(
            SignOffNumber(301),
            subject.Id,
            HasWatched: true,
            SupportLevel.StoodBy,
            Criteria.AllMet,
            NotSuitable: [],
            Phrases: [],
            ToJunior: Words.None
        );

    /// <summary>Who signs, alone in these skills.</summary>
    public static Signer AloneIn(this Person person, params SkillCode[] skills) =>
        new(person, skills.ToDictionary(skill => skill, _ => StandingKind.Alone), DaysIn: []);

    /// <summary>Who signs, alone in all that stripping Biscuit asks for.</summary>
    public static Signer MayStripWire(this Person person) =>
        person.AloneIn(SkillBook.Wire, SkillBook.Bath, SkillBook.HandStripping);

    /// <summary>The facts that a decision grants; it must have been granted.</summary>
    public static Listed<Fact> Granted(Decision decision) => Assert.IsType<Granted>(decision).Facts;

    /// <summary>All reasons against, or none where it was granted.</summary>
    public static Listed<Reason> Against(Decision decision) => decision is Refused refused ? refused.Reasons : [];
}
