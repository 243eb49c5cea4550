using MathNet.Numerics.Distributions;

namespace Academy.Competence.Forecasts;

/// <summary>How the chance of needing fixing falls with practice, as far as one person's own grooms tell.</summary>
/// <param name="Start">The logit of that chance at the first groom.</param>
/// <param name="Pace">By how much the logit falls for each e-fold of grooms; below 0 for somebody who gets worse.</param>
/// <param name="StartError">The standard error of <paramref name="Start"/>.</param>
/// <param name="PaceError">The standard error of <paramref name="Pace"/>.</param>
/// <param name="Covariance">Of the two.</param>
/// <remarks>
/// logit p(n) = start - pace ln n, a power law in the odds, with start N(.2, 1) and pace N(.7, .4): the figures are ours, made to
/// resemble published curves of clinicians. Twenty to fifty results cannot tell a power law from an exponential (Heathcote and
/// others 2000, doi 10.3758/BF03212979), so the curve is for looking weeks ahead, not years.
/// </remarks>
public sealed record LearningCurve(double Start, double Pace, double StartError, double PaceError, double Covariance)
{
    private static readonly (double Mean, double Deviation) s_start = (.2, 1);
    private static readonly (double Mean, double Deviation) s_pace = (.7, .4);

    /// <summary>The curve that fits these grooms best.</summary>
    /// <param name="neededFixing">For each rated groom, in order, whether it needed fixing; none at all gives the start alone.</param>
    public static LearningCurve Of(IReadOnlyList<bool> neededFixing)
    {
        var (start, pace) = (s_start.Mean, s_pace.Mean);
        for (var step = 0; step < 100; step++)
        {
            var sums = Sums.Of(neededFixing, start, pace);
            var (byStart, byPace) = sums.Step();
            (start, pace) = (start + byStart, pace + byPace);
            if (Math.Max(Math.Abs(byStart), Math.Abs(byPace)) < 1e-13)
                break;
        }
        return Sums.Of(neededFixing, start, pace).Curve(start, pace);
    }

    /// <summary>The chance that groom n (from 1) needs fixing.</summary>
    public double ChanceAt(int groom) => Chance(Start - (Pace * Math.Log(groom)));

    /// <summary>The 90 % range of that chance.</summary>
    public (double Lower, double Upper) RangeAt(int groom)
    {
        var (logit, practice) = (Start - (Pace * Math.Log(groom)), -Math.Log(groom));
        var error = Math.Sqrt(
            (StartError * StartError) + (2 * practice * Covariance) + (practice * practice * PaceError * PaceError)
        );
        var half = Normal.InvCDF(0, 1, .95) * error;
        return (Chance(logit - half), Chance(logit + half));
    }

    /// <summary>The groom from which the chance is at most this; infinite where the pace is not above 0.</summary>
    public double GroomsUntil(double chance) =>
        Pace > 0 ? Math.Exp((Start - Math.Log(chance / (1 - chance))) / Pace) : double.PositiveInfinity;

    private static double Chance(double logit) => 1 / (1 + Math.Exp(-logit));

    /// <summary>Slopes and curvature of the penalised likelihood at one point.</summary>
    private sealed record Sums(double Start, double Pace, double StartStart, double StartPace, double PacePace)
    {
        public static Sums Of(IReadOnlyList<bool> neededFixing, double start, double pace)
        {
            var (ofStart, ofPace) = (Weight(s_start), Weight(s_pace));
            var sums = new Sums(-ofStart * (start - s_start.Mean), -ofPace * (pace - s_pace.Mean), ofStart, 0, ofPace);
            for (var place = 0; place < neededFixing.Count; place++)
                sums = sums.And(neededFixing[place], -Math.Log(place + 1), start, pace);
            return sums;
        }

        public (double Start, double Pace) Step() =>
            (((PacePace * Start) - (StartPace * Pace)) / Determinant, ((StartStart * Pace) - (StartPace * Start)) / Determinant);

        public LearningCurve Curve(double start, double pace) =>
            new(start, pace, Math.Sqrt(PacePace / Determinant), Math.Sqrt(StartStart / Determinant), -StartPace / Determinant);

        private double Determinant => (StartStart * PacePace) - (StartPace * StartPace);

        private Sums And(bool neededFixing, double practice, double start, double pace)
        {
            var chance = Chance(start + (pace * practice));
            var (apart, weight) = ((neededFixing ? 1 : 0) - chance, chance * (1 - chance));
            return new(
                Start + apart,
                Pace + (apart * practice),
                StartStart + weight,
                StartPace + (weight * practice),
                PacePace + (weight * practice * practice)
            );
        }

        private static double Weight((double Mean, double Deviation) prior) => 1 / (prior.Deviation * prior.Deviation);
    }
}
