using Academy.Competence.Statistics;
using MathNet.Numerics.RootFinding;

namespace Academy.Competence.Forecasts;

/// <summary>When somebody's row will be full, under one answer to "how does she go on?".</summary>
/// <remarks>
/// The chance to be full within w weeks is the sum over n of the chance that the row fills at groom n, from the exact chain, times
/// the chance of n grooms in w weeks. It is exact: nothing is simulated.
/// </remarks>
public sealed class Forecast
{
    /// <summary>So many rated grooms are looked ahead. What is not full by then is "not on course".</summary>
    public const int GroomsAhead = 400;

    // Less than this at one groom adds up to nothing that a day could show.
    private const double NoChance = 1e-13;

    private readonly double[] _fillsAt;
    private readonly GroomRate _rate;

    private Forecast(double[] fillsAt, GroomRate rate) => (_fillsAt, _rate) = (fillsAt, rate);

    /// <summary>If somebody stays as now: a chance of needing fixing that does not change, known as far as grooms tell.</summary>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="marks">Marks already there, fewer than fill the row.</param>
    /// <param name="unsuitable">How many of the last rated grooms needed fixing.</param>
    /// <param name="rated">Of how many.</param>
    /// <param name="rate">How many rated grooms a week.</param>
    /// <remarks>The chance is Beta(1 + unsuitable, 1 + suitable), taken at 400 points of equal probability.</remarks>
    public static Forecast AsNow(RowProfile profile, int marks, int unsuitable, int rated, GroomRate rate) =>
        AsNow(profile, marks, (1.0 + unsuitable, 1.0 + rated - unsuitable), rate);

    /// <summary>The same from any Beta distribution of the chance.</summary>
    public static Forecast AsNow(RowProfile profile, int marks, (double A, double B) chance, GroomRate rate)
    {
        var fills = new double[GroomsAhead];
        const int points = 400;
        for (var point = 0; point < points; point++)
        {
            var needsFixing = Proportion.BetaQuantile(chance.A, chance.B, (point + .5) / points);
            Add(fills, RowChain.FillingAt(profile, _ => needsFixing, marks), 1.0 / points);
        }
        return new(fills, rate);
    }

    /// <summary>If somebody keeps learning at her pace.</summary>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="marks">Marks already there, fewer than fill the row.</param>
    /// <param name="curve">Her learning curve.</param>
    /// <param name="groomed">How many rated grooms it rests on.</param>
    /// <param name="rate">How many rated grooms a week.</param>
    public static Forecast Learning(RowProfile profile, int marks, LearningCurve curve, int groomed, GroomRate rate)
    {
        var fills = new double[GroomsAhead];
        Add(fills, RowChain.FillingAt(profile, groom => curve.ChanceAt(groomed + groom), marks), 1);
        return new(fills, rate);
    }

    /// <summary>The chance that it is not full within <see cref="GroomsAhead"/> rated grooms.</summary>
    public double ChanceNotOnCourse => Math.Max(0, 1 - _fillsAt.Sum());

    /// <summary>The chance that the row is full within so many weeks.</summary>
    public double ChanceWithin(double weeks)
    {
        var sum = 0.0;
        for (var place = 0; place < _fillsAt.Length; place++)
            if (_fillsAt[place] > NoChance)
                sum += _fillsAt[place] * _rate.ChanceOf(place + 1, weeks);
        return Math.Min(1, sum);
    }

    /// <summary>The rated grooms by which the row is full with this chance; null where that is not reached.</summary>
    public int? GroomsUntil(double chance) => _fillsAt.FirstBy(Rates.CheckedChance(chance), GroomsAhead);

    /// <summary>The weeks by which the row is full with this chance; null where that takes more than ten years.</summary>
    public double? WeeksUntil(double chance)
    {
        const double tenYears = 521.8;
        if (ChanceWithin(tenYears) < Rates.CheckedChance(chance))
            return null;

        return Brent.FindRoot(weeks => ChanceWithin(weeks) - chance, 0, tenYears, accuracy: 1e-9);
    }

    private static void Add(double[] sums, IEnumerable<double> fills, double share)
    {
        var place = 0;
        foreach (var fill in fills.Take(sums.Length))
            sums[place++] += share * fill;
    }
}
