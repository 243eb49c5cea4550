using Academy.Competence.Statistics;
using CsCheck;
using static Academy.Competence.Statistics.Verdict;

namespace Academy.Competence.Tests.Statistics;

public class RowTests
{
    [Theory]
    [InlineData(0, Suitable, 1)]
    [InlineData(14, Suitable, 15)]
    [InlineData(15, Suitable, 15)] // a full row does not grow
    [InlineData(15, Unsuitable, 11)]
    [InlineData(4, Unsuitable, 0)]
    [InlineData(3, Unsuitable, 0)] // never below none
    [InlineData(15, Critical, 0)]
    [InlineData(0, Critical, 0)]
    public void One_rated_groom_moves_the_standard_row(int before, Verdict verdict, int after) =>
        Assert.Equal(after, Row.Step(before, verdict, RowProfile.Standard));

    [Fact]
    public void Nothing_that_is_not_a_verdict_moves_a_row() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Row.Step(3, (Verdict)7, RowProfile.Standard));

    // data/competence/lc_cusum.csv: computed once more by another program
    [Fact]
    public void Every_path_of_the_check_values_is_walked_mark_by_mark()
    {
        var paths = CheckValues
            .Read("competence/lc_cusum.csv", rows: 494)
            .GroupBy(row => (row.Text("profile"), row.Text("sequence")));

        Assert.All(paths, path => WalkAlong(Profiles.Named(path.Key.Item1), path));
    }

    [Fact]
    public void Replaying_a_log_gives_the_same_marks_as_walking_it() =>
        Assert.Equal(7, Row.Replay([Suitable, Critical, .. Enumerable.Repeat(Suitable, 11), Unsuitable], RowProfile.Standard));

    [Fact]
    public void A_way_back_starts_from_marks_already_there() =>
        Assert.True(Row.IsFull(Row.Replay([Suitable, Suitable, Suitable], RowProfile.Standard, start: 12), RowProfile.Standard));

    [Fact]
    public void Marks_never_leave_the_row() =>
        Gen.Select(Profiles.Any, Gen.Enum<Verdict>().List[0, 60])
            .Sample(
                (profile, verdicts) => Row.Replay(verdicts, profile) is var marks && marks >= 0 && marks <= profile.MarksToFill
            );

    [Fact]
    public void One_more_mark_before_never_means_fewer_after() =>
        Gen.Select(Profiles.Any, Gen.Enum<Verdict>(), Gen.Int[0, RowProfile.MostMarks])
            .Sample((profile, verdict, marks) => Row.Step(marks, verdict, profile) <= Row.Step(marks + 1, verdict, profile));

    private static void WalkAlong(RowProfile profile, IEnumerable<CheckRow> path)
    {
        var (marks, evidence, general) = (0, 0.0, LogLikelihoodRow.Of(profile));
        foreach (var row in path)
        {
            var verdict = Profiles.VerdictOf(row.Text("outcome"));
            marks = Row.Step(marks, verdict, profile);
            evidence = general.Step(evidence, verdict);

            Assert.Equal(row.Whole("points"), marks);
            Assert.Equal(row.Whole("full") == 1, Row.IsFull(marks, profile));
            Assert.Equal(row.Whole("full") == 1, general.IsFull(evidence));
            Assert.Equal(row.Number("loglr"), evidence, 1e-9);
        }
    }
}
