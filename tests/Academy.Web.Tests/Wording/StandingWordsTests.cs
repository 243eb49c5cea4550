using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.DogChecks;
using Academy.Competence.Evidence;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public class StandingWordsTests
{
    private static readonly DateOnly s_july11 = new(2026, 7, 11);

    private static readonly Finding[] s_findings =
    [
        new KnowledgeFound([new(new("heat-stroke"), ModuleState.EditionTooOld, Sample.March12, DueOn: null)], DueUntil: null),
        new KnowledgeFound(
            [new(new("heat-stroke"), ModuleState.NotPassed, PassedOn: null, DueOn: null)],
            new DateOnly(2026, 8, 1)
        ),
        new KnowledgeFound([], DueUntil: null),
        new PointsFound(11, 17, 50, IsTalkDue: true),
        new PointsFound(17, 17, 19, IsTalkDue: false),
        new BreadthFound(2, 3, 1, 2),
        new SafetyFound(LastCriticalOn: null, 40, IsFarEnough: true, OpenReviews: 0),
        new SafetyFound(s_july11, 4, IsFarEnough: false, OpenReviews: 1),
        new RecencyFound(1, 3, 120, Sample.March12, Until: null),
        new RecencyFound(3, 3, 120, s_july11, new DateOnly(2026, 9, 4)),
        new DriftFound(18, 12, 18, s_july11, WatchedYet: 0),
        new DriftFound(12, 12, 18, CheckAgainOn: null, WatchedYet: 3),
        new CoatFound(IsAloneInOne: false),
    ];

    [Fact]
    public void Every_rule_says_what_it_asks_what_was_found_and_whether_it_holds()
    {
        var types = typeof(Finding)
            .Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Finding)) && !type.IsAbstract)
            .ToHashSet();
        Assert.Equal(types, s_findings.Select(finding => finding.GetType()).ToHashSet());
        foreach (var finding in s_findings)
        {
            var words = Say.Finding(finding, Sample.Names);
            Assert.Equal(finding.Holds, words.Mark == "holds");
            Assert.Equal(finding.Holds, words.Holds == "holds");
            Assert.All((string[])[words.Rule, words.Asks, words.Found], part => Assert.NotEmpty(part));
            Assert.All((string[])[words.Rule, words.Asks, words.Found, words.Holds], Plain.Check);
        }
    }

    [Fact]
    public void Points_recency_and_drift_carry_their_numbers()
    {
        Assert.Equal(
            new RuleWords(
                "Points",
                "17 marks",
                "11 of 17, after 50 rated grooms on this row; 50 without a full row: time to talk it over",
                "not yet",
                "not-yet"
            ),
            Say.Finding(s_findings[3], Sample.Names)
        );
        Assert.Equal(
            "3, the last one 11 July, 10 days ago; holds until 4 September if nothing more is groomed",
            Say.Finding(s_findings[9], Sample.Names).Found
        );
        Assert.Equal(("18; asked for a check on 11 July", "fails"), Found(s_findings[10]));
        Assert.Equal(("12; a senior stands beside for the next 3 grooms", "holds"), Found(s_findings[11]));
    }

    [Fact]
    public void Learning_is_never_marked_as_risk_and_an_open_review_is()
    {
        Assert.Equal("not-yet", Say.Finding(new RecencyFound(0, 3, 120, null, null), Sample.Names).Mark);
        Assert.Equal("fails", Say.Finding(s_findings[7], Sample.Names).Mark);
    }

    [Theory]
    [InlineData(StandingKind.Learning, "Pim, wool: learning")]
    [InlineData(StandingKind.Ready, "Pim, wool: ready, waits for the owner")]
    [InlineData(StandingKind.Alone, "Pim, wool: alone since 11 July")]
    [InlineData(StandingKind.CheckAgain, "Pim, wool: check again since 11 July")]
    [InlineData(StandingKind.Lapsed, "Pim, wool: lapsed")]
    [InlineData(StandingKind.StoodDown, "Pim, wool: stood down since 11 July")]
    public void A_heading_says_the_state_of_things(StandingKind kind, string heading) =>
        Assert.Equal(heading, Say.Heading(Standing(kind), Sample.Names));

    [Fact]
    public void Watch_and_exception_are_said_with_alone()
    {
        var watched = Standing(StandingKind.Alone) with { IsWatched = true, IsException = true };
        Assert.Equal("alone since 11 July, watched, against the rules", Say.Standing(watched, Sample.Names));
    }

    [Fact]
    public void Limits_are_said_each_in_a_few_words()
    {
        Assert.Equal(
            ["until 31 August", "not on hot days", "up to 20 kg", "only with a senior in the building"],
            Say.Limits(new Limits(new DateOnly(2026, 8, 31), true, 20, true), Sample.Names)
        );
        Assert.Empty(Say.Limits(Limits.None, Sample.Names));
    }

    [Fact]
    public void The_decision_stands_as_the_last_rule()
    {
        var held = new HeldClearance(
            Guid.Empty,
            s_july11,
            new Limits(UpToKg: 20),
            ThresholdVersion: 2,
            IsDeclared: false,
            IsException: false
        );
        var alone = Standing(StandingKind.Alone) with { Tally = Tally.Empty with { Clearance = held } };

        Assert.Equal("cleared on 11 July, under version 2; up to 20 kg", Say.Rules(alone, Sample.Names)[^1].Found);
        Assert.Equal(
            ("none", "not-yet"),
            (Say.Rules(Standing(StandingKind.Learning), Sample.Names)[^1] is var last ? (last.Found, last.Mark) : default)
        );
    }

    [Fact]
    public void Whoever_is_alone_is_not_asked_for_her_row_today()
    {
        Listed<Finding> findings = [new PointsFound(Have: 16, Need: 17, RatedOnRow: 34, IsTalkDue: false)];
        var alone = Standing(StandingKind.Alone) with { Findings = findings };
        var learning = Standing(StandingKind.Learning) with { Findings = findings };

        Assert.Empty(Say.Why(alone, Sample.Names));
        Assert.Equal("not asked now", Say.Rules(alone, Sample.Names)[0].Holds);
        Assert.Single(Say.Why(learning, Sample.Names));
        Assert.Equal("not yet", Say.Rules(learning, Sample.Names)[0].Holds);
    }

    [Fact]
    public void A_rated_groom_is_a_dot_with_its_day()
    {
        var rated = new RatedGroom(Guid.Empty, s_july11, "Border Terrier", Sample.Ines, Verdict.Unsuitable);
        Assert.Equal(new Dot(DotVerdict.NeededFixing, "11 Jul", $"/grooms/{Guid.Empty}"), Say.Dot(rated, Sample.Names));
    }

    [Fact]
    public void The_dog_check_answers_in_its_headline()
    {
        PersonAnswer ines = new(Sample.Ines, Place.Alone, [], []);
        PersonAnswer pim = new(
            Sample.Pim,
            Place.Beside,
            [new NotAloneIn(SkillBook.Wool, StandingKind.Learning, 11, 17)],
            [Sample.Ines]
        );
        PersonAnswer not = pim with { Place = Place.Not, With = [] };

        Assert.Equal("Old Tansy: Ines, alone", Head(new([], [], [], [], [], [ines, pim])));
        Assert.Equal("Old Tansy: nobody alone; Pim with Ines beside", Head(new([], [], [], [], [], [pim])));
        Assert.Equal(
            "Old Tansy: two people, one of them a senior",
            Head(new([], [], [new TwoPeopleFor(SkillBook.Seizures)], [], [], [pim]))
        );
        Assert.Equal("Old Tansy: nobody, now", Head(new([], [new BreathingTrouble()], [], [], [], [not])));
        Assert.Equal("Old Tansy: nobody before something more is known", Head(new([], [], [], [new NoWorkAgreed()], [], [not])));
        Assert.Equal("Old Tansy: nobody who is in today", Head(new([], [], [], [], [], [not])));
        Assert.Equal("Pim may, with Ines beside", Say.Answer(pim, Sample.Names));
        Assert.Equal("Pim: not this dog", Say.Answer(not, Sample.Names));
        Assert.Equal("Ines may, alone", Say.Answer(ines, Sample.Names));
    }

    private static string Head(DogCheckAnswer answer) => Say.Headline(answer, "Old Tansy", Sample.Names);

    private static (string Found, string Mark) Found(Finding finding)
    {
        var words = Say.Finding(finding, Sample.Names);
        return (words.Found, words.Mark);
    }

    private static Standing Standing(StandingKind kind) =>
        new(
            Sample.Pim,
            SkillBook.Wool,
            kind,
            kind is StandingKind.Alone or StandingKind.CheckAgain or StandingKind.StoodDown ? s_july11 : null,
            Limits.None,
            IsWatched: false,
            IsException: false,
            [],
            [.. s_findings],
            Tally.Empty,
            ThresholdVersion: 1
        );
}
