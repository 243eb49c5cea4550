using Academy.Competence.Evidence;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Standings;

public class StandingChangeTests
{
    [Fact]
    public void A_threshold_that_asks_more_takes_ready_from_whoever_no_longer_fills_it()
    {
        var path = FullRow(Ago(1));
        var change = Assert.Single(StandingChange.Between(TeamUnder(Standard, path), TeamUnder(Longer, path)));

        Assert.Equal(new StandingChange(Pim.Id, SkillBook.Double, StandingKind.Ready, StandingKind.Learning), change);
        Assert.False(change.Loses);
        Assert.False(change.Gains);
        Assert.True(new StandingChange(Pim.Id, SkillBook.Double, StandingKind.Learning, StandingKind.Ready).Gains);
    }

    [Fact]
    public void Stricter_recency_takes_alone_and_the_same_threshold_changes_nothing()
    {
        var path = Alone(Ago(60));
        var stricter = Standard with { RecentDays = 30 };

        Assert.True(Assert.Single(StandingChange.Between(TeamUnder(Standard, path), TeamUnder(stricter, path))).Loses);
        Assert.Empty(StandingChange.Between(TeamUnder(Standard, path), TeamUnder(Standard, path)));
    }

    private static readonly Threshold Longer = Standard with { Row = new RowProfile(p0: .05, marksTaken: 8, marksToFill: 23) };

    private static Team TeamUnder(Threshold threshold, IEnumerable<Step> path) =>
        Team.Of(
            new TeamEvidence(
                [Pim],
                [SkillOf(SkillBook.Double) with { Modules = [] }],
                new Dictionary<SkillCode, Threshold> { [SkillBook.Double] = threshold },
                new Dictionary<(PersonId, SkillCode), Tally> { [(Pim.Id, SkillBook.Double)] = Tally.Of(path, threshold) },
                Array.Empty<QuizTaken>().ToLookup(_ => Pim.Id),
                [],
                House,
                London
            ),
            Now
        );
}
