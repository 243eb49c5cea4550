using Academy.Competence.Forecasts;
using CsCheck;

namespace Academy.Competence.Tests.Forecasts;

public class SalonPriorTests
{
    // data/competence/learning_and_eb.json, R 4.2.2: twelve invented people of one coat
    [Fact]
    public void The_salon_s_own_distribution_and_what_follows_for_each_agree_with_the_check_values()
    {
        var check = CheckFigures.Read("competence/learning_and_eb.json").GetProperty("empirical_bayes");
        var people = check.Numbers("k").Zip(check.Numbers("n"), (unsuitable, rated) => ((int)unsuitable, (int)rated)).ToArray();
        Assert.Equal(12, people.Length);
        var prior = SalonPrior.Of(people);

        Assert.Equal(1, prior.A / check.Number("pen_a"), 1e-4);
        Assert.Equal(1, prior.B / check.Number("pen_b"), 1e-4);
        Assert.Equal(
            check.Number("expected_worse_than_third"),
            people.Sum(one => prior.ChanceAbove(1 / 3.0, one.Item1, one.Item2)),
            1e-4
        );
        Assert.Equal(
            check.Number("expected_worse_than_20pct"),
            people.Sum(one => prior.ChanceAbove(.2, one.Item1, one.Item2)),
            1e-3
        );
        foreach (var (expected, (unsuitable, rated)) in check.GetProperty("posterior").EnumerateArray().Zip(people))
        {
            Assert.Equal(expected.Number("post_mean"), prior.MeanOf(unsuitable, rated), 1e-4);
            Assert.Equal(expected.Number("lo90"), prior.RangeOf(unsuitable, rated).Lower, 1e-4);
            Assert.Equal(expected.Number("hi90"), prior.RangeOf(unsuitable, rated).Upper, 1e-4);
        }
    }

    [Fact]
    public void Two_people_who_never_needed_fixing_do_not_make_it_certain()
    {
        var prior = SalonPrior.Of([(0, 20), (0, 20)]);

        Assert.Equal(20, prior.A + prior.B, 1e-9);
        Assert.Equal(.5 / 41, prior.MeanOf(0, 0), 1e-12);
        Assert.True(prior.ChanceAbove(1 / 3.0, 0, 3) > 0);
    }

    [Fact]
    public void A_salon_without_grooms_expects_one_in_ten() => Assert.Equal(.1, SalonPrior.Of([]).MeanOf(0, 0), 1e-12);

    [Fact]
    public void A_salon_in_which_everybody_always_needs_fixing_has_a_mean_near_all_of_them()
    {
        var prior = SalonPrior.Of([(1, 1)]);

        Assert.Equal((15.0, 5.0), (prior.A, prior.B));
    }

    // What is found is not compared with anything here: that there is something, and that it is a distribution.
    [Fact]
    public void Any_salon_has_a_prior() =>
        Gen.Select(Gen.Int[1, 20], Gen.Int[0, 20])
            .Select((rated, unsuitable) => (Math.Min(unsuitable, rated), rated))
            .List[1, 40]
            .Sample(
                people =>
                {
                    var prior = SalonPrior.Of(people);
                    return prior is { A: > 0 and < 1e6, B: > 0 and < 1e6 } && prior.ChanceAbove(1 / 3.0, 0, 5) is >= 0 and <= 1;
                },
                iter: 500
            );
}
