using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Academy.Competence.Judges;

/// <summary>How far two judges say the same of the same grooms, beyond what chance would give.</summary>
/// <param name="Grooms">How many both rated.</param>
/// <param name="Observed">The weighted share on which they agree.</param>
/// <param name="ByChance">The weighted share on which two who rate as often as these, but blindly, would agree.</param>
/// <param name="Kappa">1 for full agreement, 0 for what chance gives, below 0 for less.</param>
/// <param name="StandardError">Of kappa, in large samples.</param>
/// <remarks>Cohen 1960 and 1968 (doi 10.1037/h0026256); the standard error is that of Fleiss, Cohen and Everitt 1969.</remarks>
public sealed record Agreement(int Grooms, double Observed, double ByChance, double Kappa, double StandardError)
{
    /// <summary>Kappa with its 95 % range.</summary>
    public (double Lower, double Upper) Range
    {
        get
        {
            var half = Normal.InvCDF(0, 1, .975) * StandardError;
            return (Kappa - half, Kappa + half);
        }
    }

    /// <summary>How much two levels so far apart agree: 1 for the same, 0 for the ends of the scale, by the square between.</summary>
    /// <param name="steps">How many levels lie between them, 0 or more.</param>
    /// <param name="levels">How many levels there are, 2 or more.</param>
    public static double Quadratic(int steps, int levels) => 1 - (steps * steps / (double)((levels - 1) * (levels - 1)));

    /// <summary>The agreement of two judges on levels of support, with quadratic weights; null where it cannot be computed.</summary>
    /// <param name="pairs">For each groom the two levels, from 1 to <paramref name="levels"/>.</param>
    /// <param name="levels">How many levels there are.</param>
    public static Agreement? Of(IReadOnlyCollection<(int First, int Second)> pairs, int levels)
    {
        var table = new double[levels, levels];
        foreach (var (first, second) in pairs)
            table[first - 1, second - 1]++;
        return Of(table, (row, column) => Quadratic(Math.Abs(row - column), levels));
    }

    /// <summary>The agreement in a table of counts: rows for the first judge, columns for the second.</summary>
    /// <param name="counts">A square of counts.</param>
    /// <param name="weight">How much row and column agree: 1 on the diagonal, 0 for none at all.</param>
    /// <returns>Null where nothing was rated, or both put everything into one place, so that chance alone would agree fully.</returns>
    public static Agreement? Of(double[,] counts, Func<int, int, double> weight)
    {
        var table = Matrix<double>.Build.DenseOfArray(counts);
        var grooms = table.RowSums().Sum();
        if (grooms < 1)
            return null;

        var shares = table / grooms;
        var weights = Matrix<double>.Build.Dense(table.RowCount, table.ColumnCount, weight);
        var (rows, columns) = (shares.RowSums(), shares.ColumnSums());
        var observed = weights.PointwiseMultiply(shares).RowSums().Sum();
        var byChance = rows * weights * columns;
        if (1 - byChance < 1e-12)
            return null;

        var kappa = (observed - byChance) / (1 - byChance);
        var (ofRows, ofColumns) = (weights * columns, weights.TransposeThisAndMultiply(rows));
        var apart = Matrix<double>.Build.Dense(
            table.RowCount,
            table.ColumnCount,
            (row, column) => weights[row, column] - ((ofRows[row] + ofColumns[column]) * (1 - kappa))
        );
        var spread = shares.PointwiseMultiply(apart.PointwisePower(2)).RowSums().Sum() - Square(kappa - (byChance * (1 - kappa)));
        var error = Math.Sqrt(Math.Max(0, spread) / grooms) / (1 - byChance);
        return new((int)Math.Round(grooms), observed, byChance, kappa, error);
    }

    /// <summary>Fleiss' kappa (1971): how far several judges say the same, each groom rated by as many; null as above.</summary>
    /// <param name="counts">For each groom how many judges chose each category; every row sums to the same, 2 or more.</param>
    public static double? AmongSeveral(IReadOnlyList<IReadOnlyList<int>> counts)
    {
        if (counts.Count == 0 || counts[0].Sum() < 2 || counts.Any(groom => groom.Sum() != counts[0].Sum()))
            return null;

        double judges = counts[0].Sum();
        var observed = counts.Average(groom => (groom.Sum(chosen => chosen * chosen) - judges) / (judges * (judges - 1)));
        var byChance = Enumerable
            .Range(0, counts[0].Count)
            .Sum(category => Square(counts.Sum(groom => groom[category]) / (counts.Count * judges)));
        return 1 - byChance < 1e-12 ? null : (observed - byChance) / (1 - byChance);
    }

    private static double Square(double number) => number * number;
}
