using Academy.Competence.Forecasts;
using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Forecasts;

/// <summary>How many clearances in force are probably wrong; the sum itself is checked against figures in SalonPriorTests.</summary>
public class TrustTests
{
    private static readonly TeamWords OneClean = TeamWords
        .Beginning.MayAlone(Rosa, SkillBook.Double, SkillBook.HotDay)
        .Path(Pim, SkillBook.Double, Alone(Ago(3)))
        .Path(Mei, SkillBook.Double, [.. Alone(Ago(3)), Inspected(Ago(2), Verdict.Unsuitable)]);

    [Fact]
    public void Each_clearance_in_force_adds_its_own_chance_and_no_other()
    {
        var trust = Of(OneClean);
        var prior = SalonPrior.Of([(0, 15), (1, 16)]);
        var p1 = ThresholdOf(SkillBook.Double).Row!.P1;

        Assert.Equal(
            [(Pim.Id, 0, 15), (Mei.Id, 1, 16)],
            trust.Each.OrderBy(one => one.Rated).Select(one => (one.Person, one.Unsuitable, one.Rated))
        );
        Assert.Equal(prior.ChanceAbove(p1, 1, 16), trust.Each[0].ChanceWrong, 12);
        Assert.Equal(prior.ChanceAbove(p1, 0, 15), trust.Each[1].ChanceWrong, 12);
        Assert.Equal(trust.Each[0].ChanceWrong + trust.Each[1].ChanceWrong, trust.ProbablyWrong, 12);
        Assert.Equal(2, trust.Active);
    }

    [Fact]
    public void Declarations_and_skills_without_a_row_are_counted_apart() =>
        Assert.Equal((1, 1), (Of(OneClean).Unseen, Of(OneClean).Others));

    [Fact]
    public void More_grooms_that_needed_fixing_make_a_clearance_less_sure()
    {
        var slipped = OneClean.Path(Pim, SkillBook.Double, [.. Alone(Ago(3)), Inspected(Ago(2), Verdict.Unsuitable)]);

        Assert.True(
            Of(slipped).Each.Single(one => one.Person == Pim.Id).ChanceWrong
                > Of(OneClean).Each.Single(one => one.Person == Pim.Id).ChanceWrong
        );
    }

    [Fact]
    public void A_salon_in_which_nobody_is_alone_has_nothing_to_be_wrong_about()
    {
        var trust = Of(TeamWords.Beginning);

        Assert.Equal((0, 0, 0, 0.0), (trust.Active, trust.Unseen, trust.Others, trust.ProbablyWrong));
    }

    private static Trust Of(TeamWords team) => Trust.Of(team.Now, team.ThresholdOf);
}
