using System.Text.Json;
using Academy.Competence.Judges;
using CsCheck;

namespace Academy.Competence.Tests.Judges;

public class AgreementTests
{
    private static readonly JsonElement Check = CheckFigures.Read("competence/kappa.json");

    // data/competence/kappa.json: Cohen 1968 (answers .492 and .348 published), Fleiss, Cohen and Everitt 1969, Agresti 1990;
    // values computed, equal to R's vcd and to statsmodels
    [Theory]
    [InlineData("cohen1968", "unweighted")]
    [InlineData("cohen1968", "weighted")]
    [InlineData("cohen1968", "quadratic")]
    [InlineData("fleiss_cohen_everitt1969", "unweighted")]
    [InlineData("fleiss_cohen_everitt1969", "weighted")]
    [InlineData("sexualfun", "unweighted")]
    [InlineData("sexualfun", "linear")]
    [InlineData("sexualfun", "quadratic")]
    [InlineData("calibration5", "quadratic")]
    public void Kappa_and_its_error_agree_with_the_published_tables(string set, string weighting)
    {
        var (check, expected) = (Check.GetProperty(set), Check.GetProperty(set).GetProperty(weighting));
        var rows = check.Rows("table");
        var table = new double[rows.Length, rows.Length];
        for (var row = 0; row < rows.Length; row++)
        for (var column = 0; column < rows.Length; column++)
            table[row, column] = rows[row][column];
        var found = Agreement.Of(table, Weights(check, weighting, rows.Length))!;

        Assert.Equal(expected.Number("n"), found.Grooms);
        Assert.Equal(expected.Number("po"), found.Observed, 1e-9);
        Assert.Equal(expected.Number("pe"), found.ByChance, 1e-9);
        Assert.Equal(expected.Number("kappa"), found.Kappa, 1e-9);
        Assert.Equal(expected.Number("ase"), found.StandardError, 1e-9);
        Assert.Equal(expected.Numbers("ci95")[0], found.Range.Lower, 1e-9);
        Assert.Equal(expected.Numbers("ci95")[1], found.Range.Upper, 1e-9);
    }

    // data/competence/kappa.json, calibration5: 30 invented grooms on the levels 1 to 5
    [Fact]
    public void Two_judges_of_the_same_grooms_agree_as_their_table_does()
    {
        var check = Check.GetProperty("calibration5");
        var pairs = check.Numbers("a").Zip(check.Numbers("b"), (one, other) => ((int)one, (int)other)).ToArray();
        Assert.Equal(30, pairs.Length);

        Assert.Equal(check.GetProperty("quadratic").Number("kappa"), Agreement.Of(pairs, levels: 5)!.Kappa, 1e-9);
    }

    // data/competence/kappa.json: 10 subjects, 14 raters, 5 categories; .210 published, read in the tests of statsmodels
    [Fact]
    public void Several_judges_agree_as_in_the_published_example()
    {
        var check = Check.GetProperty("fleiss_10x14");
        int[][] counts = [.. check.Rows("counts").Select(row => row.Select(count => (int)count).ToArray())];
        Assert.Equal((10, 14), (counts.Length, counts[0].Sum()));

        Assert.Equal(check.GetProperty("result").Number("kappa"), Agreement.AmongSeveral(counts)!.Value, 1e-9);
        Assert.Equal(.210, Agreement.AmongSeveral(counts)!.Value, .0005);
    }

    [Fact]
    public void Where_chance_alone_would_agree_fully_there_is_no_kappa()
    {
        Assert.Null(Agreement.Of([], levels: 5));
        Assert.Null(Agreement.Of([(4, 4), (4, 4), (4, 4)], levels: 5));
        Assert.Null(
            Agreement.AmongSeveral([
                [3, 0],
                [3, 0],
            ])
        );
        Assert.Null(Agreement.AmongSeveral([]));
    }

    [Fact]
    public void Judges_who_always_say_the_same_agree_fully_whoever_comes_first() =>
        Gen.Int[1, 5]
            .List[2, 30]
            .Where(levels => levels.Distinct().Count() > 1)
            .Sample(levels =>
                Assert.Equal(1, Agreement.Of([.. levels.Select(level => (level, level))], levels: 5)!.Kappa, 1e-12)
            );

    private static Func<int, int, double> Weights(JsonElement check, string weighting, int levels) =>
        weighting switch
        {
            "unweighted" => (row, column) => row == column ? 1 : 0,
            "linear" => (row, column) => 1 - (Math.Abs(row - column) / (levels - 1.0)),
            "quadratic" => (row, column) => Agreement.Quadratic(Math.Abs(row - column), levels),
            _ when check.TryGetProperty("agreement_weights", out _) => (row, column) =>
                check.Rows("agreement_weights")[row][column],
            _ => (row, column) => 1 - (check.Rows("disagreement_weights")[row][column] / 6),
        };
}
