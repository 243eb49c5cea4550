namespace Academy.Competence.Quizzes.Measuring;

/// <summary>The variances of the questions and the covariances of every two of them, over the people who had them.</summary>
internal sealed class Agreements
{
    private readonly Dictionary<string, int> _place;
    private readonly double[] _variances;
    private readonly double[,] _covariances;

    public Agreements(IReadOnlyCollection<AnswerSheet> sheets)
    {
        _place = sheets
            .SelectMany(sheet => sheet.Answers, (_, answer) => answer.Question)
            .Distinct(StringComparer.Ordinal)
            .Select((question, place) => (question, place))
            .ToDictionary(one => one.question, one => one.place, StringComparer.Ordinal);
        var pairs = new PairCounts(_place.Count);
        foreach (var sheet in sheets)
            pairs.Add([.. sheet.Answers.Select(answer => (_place[answer.Question], answer.IsRight))]);
        _covariances = pairs.Covariances();
        _variances = [.. Enumerable.Range(0, _place.Count).Select(place => _covariances[place, place])];
    }

    /// <summary>Alpha of a quiz with so many questions, of which one may be left out; null where it has no value.</summary>
    public double? Alpha(int length, string? without = null) => Parts(length, without)?.Alpha;

    /// <summary>What that alpha is made of.</summary>
    public AlphaParts? Parts(int length, string? without = null)
    {
        var kept = _place.Where(one => one.Key != without).Select(one => one.Value).ToArray();
        var covariances = kept.SelectMany(one => kept.Where(other => other < one), (one, other) => _covariances[one, other])
            .Where(double.IsFinite)
            .ToArray();
        if (length < 2 || covariances.Length == 0)
            return null;

        var (spread, together) = (kept.Average(place => _variances[place]), covariances.Average());
        return spread + ((length - 1) * together) > 1e-12 ? new(length, spread, together) : null;
    }

    /// <summary>For each pair of questions: how many people had both, and how many of these had one, the other and both right.</summary>
    private sealed class PairCounts(int questions)
    {
        private readonly int[,] _had = new int[questions, questions];
        private readonly int[,] _first = new int[questions, questions];
        private readonly int[,] _both = new int[questions, questions];

        public void Add(IReadOnlyList<(int Place, bool IsRight)> answers)
        {
            foreach (var (one, isRight) in answers)
            foreach (var (other, isOtherRight) in answers)
            {
                _had[one, other]++;
                _first[one, other] += isRight ? 1 : 0;
                _both[one, other] += isRight && isOtherRight ? 1 : 0;
            }
        }

        public double[,] Covariances()
        {
            var covariances = new double[questions, questions];
            for (var one = 0; one < questions; one++)
            for (var other = 0; other < questions; other++)
                covariances[one, other] = Covariance(one, other);
            return covariances;
        }

        private double Covariance(int one, int other)
        {
            double people = _had[one, other];
            return people < 2
                ? double.NaN
                : (_both[one, other] / people) - (_first[one, other] / people * (_first[other, one] / people));
        }
    }
}
