using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Academy.Competence.Judges;

/// <summary>One ordinary rating, as much of it as the severity of judges asks for.</summary>
/// <param name="Groomer">Who groomed.</param>
/// <param name="Judge">Who rated.</param>
/// <param name="Coat">The class of coat.</param>
/// <param name="Nth">The how-manyth rated groom of that groomer in that coat it was, from 1.</param>
/// <param name="IsSuitable">Whether it was suitable.</param>
public sealed record JudgedGroom(PersonId Groomer, PersonId Judge, SkillCode Coat, int Nth, bool IsSuitable);

/// <summary>How strict or kind one judge is, as far as the ratings tell it apart from whom and what was rated.</summary>
/// <param name="Judge">The judge.</param>
/// <param name="Rated">How many ratings are theirs.</param>
/// <param name="Kindness">Above 0 kinder than the others, below 0 stricter, in logits from the mean of all judges.</param>
/// <param name="StandardError">Of that.</param>
/// <param name="RawShare">The share of their own ratings that were suitable.</param>
/// <param name="ShareOfAll">The share that they would find suitable if they had rated the whole log.</param>
public sealed record JudgeSeverity(
    PersonId Judge,
    int Rated,
    double Kindness,
    double StandardError,
    double RawShare,
    double ShareOfAll
)
{
    /// <summary>Below so many ratings nothing is said of a judge (common practice, no published source).</summary>
    public const int FewestRatings = 15;

    /// <summary>Whether there are enough ratings to say anything.</summary>
    public bool IsSayable => Rated >= FewestRatings;

    /// <summary>
    /// Whether it is worth a talk: more than .7 logits from the others and more than two standard errors. Points are never
    /// corrected by it.
    /// </summary>
    public bool IsWorthATalk => IsSayable && Math.Abs(Kindness) > .7 && Math.Abs(Kindness) > 2 * StandardError;
}

/// <summary>What all ordinary ratings together say about the judges. Nobody has to rate anything twice.</summary>
/// <param name="Judges">Each judge, the strictest first.</param>
/// <param name="SpreadOfGroomers">The standard deviation of the groomers, in logits.</param>
/// <param name="SpreadOfJudges">The standard deviation of the judges, in logits.</param>
/// <param name="Evidence">The Laplace evidence of the two spreads, for comparing.</param>
/// <remarks>
/// <para>
/// logit P(suitable) = start + coat + slope ln(nth) + groomer + judge, fitted by penalised Newton steps. Priors: start N(0, 5),
/// each coat N(0, 1.5), slope N(.7, 1), groomers N(0, s), judges N(0, t). The spreads s and t maximise the Laplace evidence with
/// a term ln s - s / 2 each, which keeps them off nought (Chung and others 2013, Psychometrika 78:685): with three judges plain
/// likelihood often says that all are alike.
/// </para>
/// <para>The figures of the priors are ours.</para>
/// </remarks>
public sealed record Severity(Listed<JudgeSeverity> Judges, double SpreadOfGroomers, double SpreadOfJudges, double Evidence)
{
    /// <summary>
    /// Whether judges can be compared at all: everybody hangs together through groomers whom several of them rated. Two teams that
    /// never mixed cannot be told apart from two teams of different skill.
    /// </summary>
    public static bool AreComparable(IEnumerable<JudgedGroom> grooms)
    {
        var groups = new Groups();
        foreach (var groom in grooms)
            groups.Join(("groomer", groom.Groomer), ("judge", groom.Judge));
        return groups.Count <= 1;
    }

    /// <summary>The severities, with the spreads that fit best; null without ratings or where judges cannot be compared.</summary>
    public static Severity? Of(IReadOnlyList<JudgedGroom> grooms)
    {
        if (grooms.Count == 0 || !AreComparable(grooms))
            return null;

        var model = new SeverityModel(grooms);
        var found = FindMinimum.OfFunction(
            (ofGroomers, ofJudges) => -Worth(model, Math.Exp(ofGroomers), Math.Exp(ofJudges)),
            Math.Log(.8),
            Math.Log(.5),
            tolerance: 1e-12,
            maxIterations: 2000
        );
        return model.Fit(Math.Exp(found.Item1), Math.Exp(found.Item2)).Severity();
    }

    /// <summary>The severities at given spreads.</summary>
    /// <param name="grooms">At least one rating.</param>
    /// <param name="spreadOfGroomers">Above 0.</param>
    /// <param name="spreadOfJudges">Above 0.</param>
    public static Severity At(IReadOnlyList<JudgedGroom> grooms, double spreadOfGroomers, double spreadOfJudges) =>
        new SeverityModel(grooms).Fit(spreadOfGroomers, spreadOfJudges).Severity();

    private static double Worth(SeverityModel model, double ofGroomers, double ofJudges) =>
        model.Fit(ofGroomers, ofJudges).Evidence + Math.Log(ofGroomers) - (ofGroomers / 2) + Math.Log(ofJudges) - (ofJudges / 2);

    /// <summary>Who hangs together with whom: union by the smaller name, with path halving.</summary>
    private sealed class Groups
    {
        private readonly Dictionary<(string, PersonId), (string, PersonId)> _above = [];

        public int Count => _above.Count(one => one.Key == one.Value);

        public void Join((string, PersonId) one, (string, PersonId) other) => _above[TopOf(one)] = TopOf(other);

        private (string, PersonId) TopOf((string, PersonId) one)
        {
            _above.TryAdd(one, one);
            while (_above[one] != one)
                one = _above[one] = _above[_above[one]];
            return one;
        }
    }
}
