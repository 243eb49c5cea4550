using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Salons;

public class KeepingTests
{
    private static readonly ModuleName Blades = new("blades-and-scissors");
    private static readonly ModuleName Heat = new("heat-stroke");
    private static readonly Skill Clip = new(new("show-clip"), SkillKind.Technique, "show clip", Modules: []);

    [Fact]
    public void A_salon_opens_with_its_owner_its_house_rules_every_skill_and_a_threshold_for_each()
    {
        var facts = Granted(Keeping.Open(Said("The Damp Paw"), London, Olga, Today));

        Assert.Equal(
            [
                new SalonOpened(Said("The Damp Paw"), "Europe/London"),
                new PersonDescribed(Olga.Id, Said("Olga"), Role.Owner, Olga.JoinedOn, null, IsUnder18: false, IsDeputy: false),
                new HouseRulesSet(new HouseRules()),
            ],
            facts.Take(3)
        );
        Assert.Equal(SkillBook.Defaults.Select(skill => skill.Code), facts.OfType<SkillDescribed>().Select(fact => fact.Skill));
        Assert.Equal(
            SkillBook.Defaults.Select(skill => DefaultThresholds.For(skill.Code, Today)),
            facts.OfType<ThresholdSet>().Select(fact => fact.Threshold)
        );
    }

    [Fact]
    public void A_salon_has_a_name_and_an_owner_with_a_name() =>
        Assert.Equal(
            [new WordsNeeded(WordsFor.Name), new OwnerOnly()],
            Against(Keeping.Open(Said("The Damp Paw"), London, Rosa with { Name = "" }, Today))
        );

    [Fact]
    public void A_book_knows_since_which_day_a_skill_asks_for_a_module()
    {
        var (opened, later, last) = (At(Today), At(Today.AddDays(10)), At(Today.AddDays(20)));
        var book = new SalonBook()
            .After(Describing(Clip with { Modules = [Blades] }), opened)
            .After(Describing(Clip with { Modules = [Blades, Heat] }), later)
            .After(Describing(Clip with { Modules = [Blades, Heat], Name = "clip" }), last);

        Assert.Equal([new ModuleAdded(Heat, Today.AddDays(10))], book.Find(Clip.Code)!.Added);
        Assert.Null(book.Find(Clip.Code)!.AddedOn(Blades));

        var again = book.After(Describing(Clip with { Modules = [Heat] }), last)
            .After(Describing(Clip with { Modules = [Blades, Heat] }), last);
        Assert.Equal([new(Blades, Today.AddDays(20)), new(Heat, Today.AddDays(10))], again.Find(Clip.Code)!.Added);
    }

    [Fact]
    public void Skills_are_let_ask_for_more_and_what_they_ask_for_already_changes_nothing()
    {
        var book = new SalonBook { Skills = [Clip with { Modules = [Blades] }, Clip with { Code = new("other") }] };

        Assert.Equal(
            [new SkillDescribed(Clip.Code, Clip.Kind, Clip.Name, [Blades, Heat], IsRetired: false)],
            Granted(Keeping.AskFor([(Clip.Code, Heat), (Clip.Code, Blades), (new("gone"), Heat)], book, Olga))
        );
        Assert.Equal([new OwnerOnly()], Against(Keeping.AskFor([(Clip.Code, Heat)], book, Rosa)));
    }

    [Fact]
    public void Only_the_owner_describes_the_salon_and_sets_its_rules_its_skills_and_its_thresholds()
    {
        Assert.Equal([new OwnerOnly()], Against(Keeping.Describe(Said("The Damp Paw"), Words.None, Words.None, Rosa)));
        Assert.Equal([new OwnerOnly()], Against(Keeping.SetHouseRules(House, Rosa)));
        Assert.Equal([new OwnerOnly()], Against(Keeping.DescribeSkill(Clip, before: null, Rosa)));
        Assert.Equal([new OwnerOnly()], Against(Keeping.SetThreshold(Standard with { FromDay = Today }, Rosa, Today)));
    }

    [Fact]
    public void The_salon_tells_its_name_and_its_vet_for_the_heat_card() =>
        Assert.Equal(
            [new SalonDescribed(Said("The Damp Paw"), Said("The vet on the corner"), Said("01632 960000"))],
            Granted(Keeping.Describe(Said("The Damp Paw"), Said("The vet on the corner"), Said("01632 960000"), Olga))
        );

    [Fact]
    public void A_salon_cannot_lose_its_name() =>
        Assert.Equal([new WordsNeeded(WordsFor.Name)], Against(Keeping.Describe(Said(" "), Words.None, Words.None, Olga)));

    [Fact]
    public void House_rules_are_set_as_a_whole() =>
        Assert.Equal(
            [new HouseRulesSet(House with { StopFromTenthsC = 290 })],
            Granted(Keeping.SetHouseRules(House with { StopFromTenthsC = 290 }, Olga))
        );

    [Fact]
    public void The_owner_erases_words_that_are_there_with_a_reason()
    {
        Assert.Equal(
            [new WordsErased(17, Said("She asked."))],
            Granted(Keeping.EraseWords(17, hasWords: true, Olga, Said("She asked.")))
        );
        Assert.Equal(
            [new OwnerOnly(), new NothingToErase(), new WordsNeeded(WordsFor.Erasure)],
            Against(Keeping.EraseWords(17, hasWords: false, Rosa, Words.None))
        );
    }

    [Fact]
    public void The_owner_adds_a_skill_of_the_salons_own_with_a_name()
    {
        Assert.Equal(
            [new SkillDescribed(Clip.Code, SkillKind.Technique, "show clip", Modules: [], IsRetired: false)],
            Granted(Keeping.DescribeSkill(Clip, before: null, Olga))
        );
        Assert.Equal(
            [new WordsNeeded(WordsFor.Name)],
            Against(Keeping.DescribeSkill(Clip with { Name = "" }, before: null, Olga))
        );
    }

    [Fact]
    public void A_skill_may_be_renamed_and_retired_but_a_coat_never_becomes_a_technique()
    {
        Assert.Empty(Against(Keeping.DescribeSkill(Clip with { Name = "ring clip", IsRetired = true }, Clip, Olga)));
        Assert.Equal(
            [new SkillCodeTaken(Clip.Code)],
            Against(Keeping.DescribeSkill(Clip with { Kind = SkillKind.Coat }, Clip, Olga))
        );
    }

    [Fact]
    public void A_threshold_is_set_from_today_at_the_earliest()
    {
        Assert.Equal(
            [new ThresholdSet(Standard with { FromDay = Today })],
            Granted(Keeping.SetThreshold(Standard with { FromDay = Today }, Olga, Today))
        );
        Assert.Equal([new FromDayPast(Ago(1))], Against(Keeping.SetThreshold(Standard with { FromDay = Ago(1) }, Olga, Today)));
    }

    // tenths of a degree, humidity
    [Theory]
    [InlineData(-100, 0, true)]
    [InlineData(600, 100, true)]
    [InlineData(-101, null, false)]
    [InlineData(601, null, false)]
    [InlineData(210, -1, false)]
    [InlineData(210, 101, false)]
    public void A_reading_is_what_a_room_can_be(int tenths, int? humidity, bool plausible) =>
        Assert.Equal(
            plausible ? [] : [new ReadingNotPlausible()],
            Against(Keeping.ReadRoom(new(Now, tenths, humidity), "bath", Now))
        );

    [Fact]
    public void A_reading_is_not_of_the_future() =>
        Assert.Equal(
            [new InTheFuture(Now.AddMinutes(6))],
            Against(Keeping.ReadRoom(new(Now.AddMinutes(6), 210, 50), "bath", Now))
        );

    [Fact]
    public void The_librarys_edition_of_a_module_is_noted_so_that_a_day_long_past_can_be_answered() =>
        Assert.Equal(
            [
                new ModuleEditionSeen(
                    new("heat-stroke"),
                    3,
                    SafetyCriticalSince: 2,
                    RefresherDays: 90,
                    RenewedEachSpring: true,
                    "0a1b"
                ),
            ],
            Granted(
                Keeping.SeeEdition(
                    new("heat-stroke"),
                    3,
                    safetyCriticalSince: 2,
                    refresherDays: 90,
                    renewedEachSpring: true,
                    "0a1b"
                )
            )
        );

    private static DateTimeOffset At(DateOnly day) => new(day, new TimeOnly(12, 0), TimeSpan.Zero);

    private static SkillDescribed Describing(Skill skill) =>
        new(skill.Code, skill.Kind, skill.Name, skill.Modules, skill.IsRetired);
}
