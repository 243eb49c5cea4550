using Academy.Competence.Statistics;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Academy.Competence.Tests.Statistics;

public class RowChainTests
{
    private static readonly Gen<double> s_rate = Gen.Double[0, 1];

    // data/competence/lc_cusum_oc.csv: exact chain and 200,000 simulated paths, both by another program
    [Fact]
    public void The_chances_to_fill_a_row_agree_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/lc_cusum_oc.csv", rows: 87),
            row =>
            {
                foreach (var grooms in (int[])[20, 30, 40, 50, 60, 100])
                    Assert.Equal(
                        row.Number($"by_{grooms}"),
                        RowChain.ChanceFullBy(Profile(row), grooms, RateAt(row), Start(row)),
                        1e-8
                    );
                Assert.Equal(
                    row.Number("mc_50"),
                    RowChain.ChanceFullBy(Profile(row), 50, RateAt(row), Start(row)),
                    Simulated(row)
                );
            }
        );

    [Fact]
    public void The_mean_grooms_to_a_full_row_agree_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/lc_cusum_oc.csv", rows: 87).Where(row => row.Has("p")),
            row => AssertMean(row.Number("E_T"), RowChain.MeanGrooms(Profile(row), RateOf(row), Start(row)))
        );

    [Fact]
    public void The_medians_and_four_in_five_agree_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/lc_cusum_oc.csv", rows: 87),
            row =>
            {
                Assert.Equal(Within500(row, "median_T"), RowChain.GroomsUntil(Profile(row), .5, RateAt(row), Start(row)));
                Assert.Equal(Within500(row, "q80_T"), RowChain.GroomsUntil(Profile(row), .8, RateAt(row), Start(row)));
            }
        );

    [Fact]
    public void A_learner_is_as_good_as_the_check_values_say_when_the_row_fills() =>
        Assert.All(
            CheckValues.Read("competence/lc_cusum_oc.csv", rows: 87).Where(row => row.Has("mean_p_at_full")),
            row => Assert.Equal(row.Number("mean_p_at_full"), MeanRateWhenFull(row), 1e-6)
        );

    // data/competence/lc_cusum_pmf.csv
    [Theory]
    [InlineData("p=0.05", .05)]
    [InlineData("p=0.10", .10)]
    [InlineData("p=0.20", .20)]
    [InlineData("p=1/3", 1.0 / 3)]
    public void The_chance_to_fill_the_standard_row_at_one_groom_agrees_with_the_check_values(string column, double rate)
    {
        var rows = CheckValues.Read("competence/lc_cusum_pmf.csv", rows: 100);
        var filling = RowChain.FillingAt(RowProfile.Standard, _ => rate);

        Assert.All(rows.Zip(filling), pair => Assert.Equal(pair.First.Number(column), pair.Second, 1e-10));
    }

    // data/competence/lc_design.csv
    [Fact]
    public void The_shortest_row_for_an_error_rate_agrees_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/lc_design.csv", rows: 15),
            row =>
            {
                var found = Assert.IsType<RowProfile>(
                    RowChain.Shortest(row.Number("p0"), row.Whole("m"), errorRate: .05, row.Whole("N"))
                );

                Assert.Equal(row.Whole("H"), found.MarksToFill);
                Assert.Equal(row.Number("p1"), found.P1, 1e-10);
                Assert.Equal(row.Number("P_full_by_N_p1"), RowChain.ChanceFullBy(found, row.Whole("N"), found.P1), 1e-8);
                Assert.Equal(row.Number("P_full_by_N_p0"), RowChain.ChanceFullBy(found, row.Whole("N"), found.P0), 1e-8);
                Assert.Equal(row.Number("E_T_p0"), RowChain.MeanGrooms(found, found.P0), 1e-7);
                Assert.Equal(row.Number("E_T_half_p0"), RowChain.MeanGrooms(found, found.P0 / 2), 1e-7);
            }
        );

    // A row of two marks and -1, every path of three grooms counted by hand: full with ++., -++ and never otherwise.
    [Theory]
    [InlineData(.5)]
    [InlineData(.2)]
    public void A_row_small_enough_to_count_on_paper_is_right(double rate)
    {
        var row = new RowProfile(p0: .1, marksTaken: 1, marksToFill: 2);
        var good = 1 - rate;

        Assert.Equal((good * good) + (rate * good * good), RowChain.ChanceFullBy(row, 3, rate), 1e-15);
    }

    [Fact]
    public void Counting_every_sequence_of_fourteen_grooms_gives_the_same_chance()
    {
        var row = new RowProfile(p0: .1, marksTaken: 4, marksToFill: 7);

        Assert.Equal(ByEnumeration(row, grooms: 14, rate: .2), RowChain.ChanceFullBy(row, 14, .2), 1e-12);
    }

    [Fact]
    public void A_full_row_needs_nothing_more()
    {
        Assert.Equal(1, RowChain.ChanceFullBy(RowProfile.Standard, 0, 1, start: 15));
        Assert.Equal(0, RowChain.MeanGrooms(RowProfile.Standard, 1, start: 15));
        Assert.Equal(0, RowChain.GroomsUntil(RowProfile.Standard, .5, 1, start: 15));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.FillingAt(RowProfile.Standard, _ => .1, start: 15));
    }

    [Fact]
    public void Someone_who_is_always_suitable_needs_exactly_the_marks_that_are_missing()
    {
        Assert.Equal(15, RowChain.MeanGrooms(RowProfile.Standard, rate: 0));
        Assert.Equal(0, RowChain.ChanceFullBy(RowProfile.Standard, 14, rate: 0));
        Assert.Equal(1, RowChain.ChanceFullBy(RowProfile.Standard, 15, rate: 0));
        Assert.Equal(3, RowChain.GroomsUntil(RowProfile.Standard, .99, rate: 0, start: 12));
    }

    [Fact]
    public void Someone_who_is_never_suitable_never_fills_a_row()
    {
        Assert.Equal(double.PositiveInfinity, RowChain.MeanGrooms(RowProfile.Standard, rate: 1));
        Assert.Equal(0, RowChain.ChanceFullBy(RowProfile.Standard, 500, rate: 1));
        Assert.Null(RowChain.GroomsUntil(RowProfile.Standard, .01, rate: 1));
    }

    [Theory]
    [InlineData(-.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_rate_that_is_no_share_is_refused(double rate)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.ChanceFullBy(RowProfile.Standard, 10, rate));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.MeanGrooms(RowProfile.Standard, rate));
    }

    [Fact]
    public void Fewer_than_no_grooms_and_fewer_than_no_marks_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.ChanceFullBy(RowProfile.Standard, -1, .1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.ChanceFullBy(RowProfile.Standard, 10, .1, start: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.GroomsUntil(RowProfile.Standard, 1, .1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.Shortest(.1, 4, errorRate: 0, horizon: 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => RowChain.Shortest(.1, 4, errorRate: .05, horizon: 0));
    }

    [Fact]
    public void No_row_is_strict_enough_for_a_fine_rate_beside_the_rate_that_is_not() =>
        Assert.Null(RowChain.Shortest(p0: .499, marksTaken: 1, errorRate: .001, horizon: 20_000));

    [Fact]
    public void More_grooms_never_make_a_full_row_less_likely() =>
        Gen.Select(Profiles.Any, s_rate, Gen.Int[0, 80])
            .Sample(
                (row, rate, grooms) =>
                    RowChain.ChanceFullBy(row, grooms, rate) <= RowChain.ChanceFullBy(row, grooms + 1, rate) + 1e-12
            );

    [Fact]
    public void A_better_groomer_never_fills_a_row_later() =>
        Gen.Select(Profiles.Any, s_rate, s_rate, Gen.Int[0, 80])
            .Sample(
                (row, one, other, grooms) =>
                {
                    var (better, worse) = (Math.Min(one, other), Math.Max(one, other));
                    Assert.True(RowChain.ChanceFullBy(row, grooms, better) >= RowChain.ChanceFullBy(row, grooms, worse) - 1e-12);
                    Assert.True(RowChain.MeanGrooms(row, better) <= RowChain.MeanGrooms(row, worse) * (1 + 1e-12));
                }
            );

    [Fact]
    public void A_longer_row_and_a_dearer_mistake_let_no_more_people_through() =>
        Gen.Select(Profiles.Any, s_rate, Gen.Int[0, 80])
            .Sample(
                (row, rate, grooms) =>
                {
                    var through = RowChain.ChanceFullBy(row, grooms, rate) + 1e-12;
                    Assert.True(
                        RowChain.ChanceFullBy(new RowProfile(row.P0, row.MarksTaken, row.MarksToFill + 1), grooms, rate)
                            <= through
                    );
                    Assert.True(
                        RowChain.ChanceFullBy(new RowProfile(row.P0 / 4, row.MarksTaken + 1, row.MarksToFill), grooms, rate)
                            <= through
                    );
                }
            );

    [Fact]
    public void The_mean_is_the_solution_of_the_chains_equations() =>
        Gen.Select(Profiles.Any, Gen.Double[0, .4])
            .Sample((row, rate) => AssertMean(BySolving(row, rate), RowChain.MeanGrooms(row, rate)));

    private static void AssertMean(double expected, double actual) => Assert.Equal(1, actual / expected, 1e-7);

    private static RowProfile Profile(CheckRow row) => Profiles.Named(row.Text("profile"));

    private static int Start(CheckRow row) => row.Whole("start");

    private static double Simulated(CheckRow row) => Math.Max(4 * row.Number("mc_se"), 3e-5);

    private static int? Within500(CheckRow row, string column) => row.Has(column) ? row.Whole(column) : null;

    private static Func<int, double> RateAt(CheckRow row) => row.Has("p") ? _ => RateOf(row) : LearnerAt(row.Text("scenario"));

    // Rates are printed to ten digits; the chain is compared to eight, at which a third and the mirrored rate need them all.
    private static double RateOf(CheckRow row) =>
        row.Text("p") == "0.3333333333" ? 1.0 / 3
        : row.Text("p") == row.Text("p1") ? Profile(row).P1
        : row.Number("p");

    private static Func<int, double> LearnerAt(string scenario) =>
        scenario switch
        {
            "learner_fast" => Falling(to: .05, over: 6),
            "learner_typical" => Falling(to: .08, over: 10),
            "learner_slow" => Falling(to: .10, over: 20),
            "learner_plateau20" => Falling(to: .20, over: 10),
            "learner_plateau_third" => Falling(to: 1.0 / 3, over: 10),
            _ => throw new ArgumentOutOfRangeException(nameof(scenario), scenario, "No such learner in the check values."),
        };

    private static Func<int, double> Falling(double to, double over) =>
        groom => to + ((.60 - to) * Math.Exp(-(groom - 1) / over));

    private static double MeanRateWhenFull(CheckRow row)
    {
        var filling = RowChain.FillingAt(Profile(row), RateAt(row), Start(row)).Take(500).ToArray();
        return filling.Select((chance, before) => chance * RateAt(row)(before + 1)).Sum() / filling.Sum();
    }

    private static double ByEnumeration(RowProfile row, int grooms, double rate) =>
        Enumerable.Range(0, 1 << grooms).Where(paths => Fills(row, grooms, paths)).Sum(path => ChanceOf(path, grooms, rate));

    private static bool Fills(RowProfile row, int grooms, int path)
    {
        var marks = 0;
        for (var groom = 0; groom < grooms && !Row.IsFull(marks, row); groom++)
            marks = Row.Step(marks, (path >> groom & 1) == 1 ? Verdict.Unsuitable : Verdict.Suitable, row);
        return Row.IsFull(marks, row);
    }

    private static double ChanceOf(int path, int grooms, double rate)
    {
        var unsuitable = System.Numerics.BitOperations.PopCount((uint)path);
        return Math.Pow(rate, unsuitable) * Math.Pow(1 - rate, grooms - unsuitable);
    }

    private static double BySolving(RowProfile row, double rate)
    {
        var left = Matrix<double>.Build.DenseIdentity(row.MarksToFill);
        for (var marks = 0; marks < row.MarksToFill; marks++)
        {
            left[marks, Math.Max(0, marks - row.MarksTaken)] -= rate;
            if (marks + 1 < row.MarksToFill)
                left[marks, marks + 1] -= 1 - rate;
        }
        return left.Solve(Vector<double>.Build.Dense(row.MarksToFill, 1))[0];
    }
}
