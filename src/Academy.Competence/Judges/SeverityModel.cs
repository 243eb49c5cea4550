using MathNet.Numerics.LinearAlgebra;

namespace Academy.Competence.Judges;

/// <summary>The design of the severity model: which coefficient each rating touches.</summary>
/// <remarks>
/// The order of the coefficients is start, coats, slope, groomers, judges. A rating touches five of them, so sums run over these
/// and not over a matrix of all ratings.
/// </remarks>
internal sealed class SeverityModel
{
    private const double SlopeExpected = .7;

    private readonly IReadOnlyList<JudgedGroom> _grooms;
    private readonly Touched[] _touched;
    private readonly SkillCode[] _coats;
    private readonly PersonId[] _groomers;
    private readonly PersonId[] _judges;

    public SeverityModel(IReadOnlyList<JudgedGroom> grooms)
    {
        _grooms = grooms;
        _coats = [.. grooms.Select(groom => groom.Coat).Distinct()];
        _groomers = [.. grooms.Select(groom => groom.Groomer).Distinct()];
        _judges = [.. grooms.Select(groom => groom.Judge).Distinct()];
        var (coats, groomers, judges) = (Places(_coats), Places(_groomers), Places(_judges));
        _touched =
        [
            .. grooms.Select(groom => new Touched(
                1 + coats[groom.Coat],
                2 + _coats.Length + groomers[groom.Groomer],
                FirstJudge + judges[groom.Judge],
                Math.Log(groom.Nth),
                groom.IsSuitable
            )),
        ];
    }

    private int Slope => 1 + _coats.Length;

    private int FirstJudge => 2 + _coats.Length + _groomers.Length;

    private int Count => FirstJudge + _judges.Length;

    /// <summary>The coefficients that fit best at these spreads: Newton steps, halved where they overshoot.</summary>
    public Fitted Fit(double spreadOfGroomers, double spreadOfJudges)
    {
        var (expected, precision) = Priors(spreadOfGroomers, spreadOfJudges);
        var at = expected.Clone();
        var worth = Worth(at, expected, precision);
        for (var step = 0; step < 200; step++)
        {
            var (slope, curve) = Curve(at, expected, precision);
            var move = curve.Cholesky().Solve(slope);
            var share = 1.0;
            var next = at + move;
            var better = Worth(next, expected, precision);
            while (better < worth - 1e-12 && share > 1e-8)
            {
                share /= 2;
                next = at + (share * move);
                better = Worth(next, expected, precision);
            }
            (at, worth) = (next, better);
            if (move.AbsoluteMaximum() < 1e-12)
                break;
        }
        return new(
            this,
            at,
            Curve(at, expected, precision).Curve,
            Evidence(at, expected, precision),
            spreadOfGroomers,
            spreadOfJudges
        );
    }

    private (Vector<double> Expected, Vector<double> Precision) Priors(double ofGroomers, double ofJudges)
    {
        var expected = Vector<double>.Build.Dense(Count, place => place == Slope ? SlopeExpected : 0);
        var precision = Vector<double>.Build.Dense(Count, place => Precision(Deviation(place)));
        return (expected, precision);

        double Deviation(int place) =>
            place == 0 ? 5
            : place < Slope ? 1.5
            : place == Slope ? 1
            : place < FirstJudge ? ofGroomers
            : ofJudges;

        static double Precision(double deviation) => 1 / (deviation * deviation);
    }

    private double LogLikelihood(Vector<double> at)
    {
        var sum = 0.0;
        foreach (var one in _touched)
        {
            var logit = LogitOf(one, at);
            sum += (one.IsSuitable ? logit : 0) - LogOnePlusExp(logit);
        }
        return sum;
    }

    private double Worth(Vector<double> at, Vector<double> expected, Vector<double> precision) =>
        LogLikelihood(at) - (Penalty(at, expected, precision) / 2);

    private double Evidence(Vector<double> at, Vector<double> expected, Vector<double> precision) =>
        Worth(at, expected, precision)
        + (precision.PointwiseLog().Sum() / 2)
        - (Curve(at, expected, precision).Curve.Cholesky().DeterminantLn / 2);

    private static double Penalty(Vector<double> at, Vector<double> expected, Vector<double> precision) =>
        precision.DotProduct((at - expected).PointwisePower(2));

    private (Vector<double> Slope, Matrix<double> Curve) Curve(
        Vector<double> at,
        Vector<double> expected,
        Vector<double> precision
    )
    {
        var slope = -precision.PointwiseMultiply(at - expected);
        var curve = Matrix<double>.Build.DenseOfDiagonalVector(precision);
        foreach (var one in _touched)
        {
            var chance = Chance(LogitOf(one, at));
            var weight = chance * (1 - chance);
            Span<(int Place, double By)> touched =
            [
                (0, 1),
                (one.Coat, 1),
                (Slope, one.Practice),
                (one.Groomer, 1),
                (one.Judge, 1),
            ];
            foreach (var (place, by) in touched)
            {
                slope[place] += by * ((one.IsSuitable ? 1 : 0) - chance);
                foreach (var (other, byOther) in touched)
                    curve[place, other] += weight * by * byOther;
            }
        }
        return (slope, curve);
    }

    private double LogitOf(Touched one, Vector<double> at) =>
        at[0] + at[one.Coat] + (at[Slope] * one.Practice) + at[one.Groomer] + at[one.Judge];

    private static double Chance(double logit) => 1 / (1 + Math.Exp(-logit));

    private static double LogOnePlusExp(double logit) => logit > 30 ? logit : Math.Log(1 + Math.Exp(logit));

    private static Dictionary<T, int> Places<T>(IEnumerable<T> items)
        where T : notnull => items.Select((item, place) => (item, place)).ToDictionary(one => one.item, one => one.place);

    private sealed record Touched(int Coat, int Groomer, int Judge, double Practice, bool IsSuitable);

    /// <summary>The model at its best coefficients.</summary>
    internal sealed class Fitted(
        SeverityModel model,
        Vector<double> at,
        Matrix<double> curve,
        double evidence,
        double spreadOfGroomers,
        double spreadOfJudges
    )
    {
        /// <summary>The coefficients: start, coats, slope, groomers, judges, each in the order of their first rating.</summary>
        public Vector<double> Coefficients => at;

        /// <summary>The Laplace evidence, without the terms of the spreads themselves.</summary>
        public double Evidence => evidence;

        /// <summary>The standard errors of the coefficients.</summary>
        public Vector<double> StandardErrors => Covariances.Diagonal().PointwiseSqrt();

        private Matrix<double> Covariances { get; } = curve.Inverse();

        public Severity Severity() =>
            new(
                [.. model._judges.Select((judge, place) => Of(judge, place)).OrderBy(one => one.Kindness)],
                spreadOfGroomers,
                spreadOfJudges,
                evidence
            );

        private JudgeSeverity Of(PersonId judge, int place)
        {
            var contrast = Contrast(place);
            var own = model._grooms.Where(groom => groom.Judge == judge).ToArray();
            return new(
                judge,
                own.Length,
                contrast * at,
                Math.Sqrt(contrast * Covariances * contrast),
                own.Average(groom => groom.IsSuitable ? 1.0 : 0),
                model._touched.Average(one => Chance(WithoutPeople(one) + at[model.FirstJudge + place]))
            );
        }

        private double WithoutPeople(Touched one) => at[0] + at[one.Coat] + (at[model.Slope] * one.Practice);

        // One judge against the mean of all.
        private Vector<double> Contrast(int place) =>
            Vector<double>.Build.Dense(
                at.Count,
                index =>
                    index < model.FirstJudge ? 0 : (index == model.FirstJudge + place ? 1.0 : 0) - (1.0 / model._judges.Length)
            );
    }
}
