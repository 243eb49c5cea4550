using Academy.Competence.Quizzes;
using Academy.Modules.Pictures;
using Academy.Modules.Reading;

namespace Academy.Modules.Lessons;

/// <summary>Compares the questions on pictures with the pictures.</summary>
internal static class SpotCheck
{
    /// <summary>
    /// On a phone the picture is about 360 pixels wide and a fingertip takes 44 of them: nearer than an eighth of the width, two
    /// places could not be told apart, and nearer to the edge than half of that a marker would stick out.
    /// </summary>
    private const int FingertipsAcross = 8;

    /// <summary>The pictures that questions ask about.</summary>
    public static IEnumerable<string> Of(
        IReadOnlyList<(Question Question, int Line)> questions,
        IReadOnlyDictionary<string, Picture> pictures,
        Findings findings
    )
    {
        List<string> asked = [];
        foreach (var (question, line) in questions)
        {
            if (question.Kind is not OnPicture spotting)
                continue;
            if (pictures.TryGetValue(spotting.Picture, out var picture))
                Check([.. spotting.Spots], picture, line, findings);
            else
                findings.Broken(
                    line,
                    $"No sound picture \"{spotting.Picture}\" lies beside the text. Put it there, or correct the name after \"Picture: \"."
                );
            asked.Add(spotting.Picture);
        }
        return asked;
    }

    private static void Check(Spot[] spots, Picture picture, int line, Findings findings)
    {
        var fingertip = (decimal)picture.Width / FingertipsAcross;
        foreach (var spot in spots.Where(spot => !IsInside(spot, picture, fingertip / 2)))
            findings.Fault(
                line,
                $"The place {spot.X},{spot.Y} is outside the picture or too near to its edge. Keep {fingertip / 2:0} of its units away from each edge."
            );
        var near = spots.SelectMany((one, place) => spots.Skip(place + 1).Select(other => (one, other)));
        foreach (var (one, other) in near.Where(pair => AreNearer(pair.one, pair.other, fingertip)))
            findings.Fault(
                line,
                $"The places {one.X},{one.Y} and {other.X},{other.Y} are too near to each other for a fingertip. Keep {fingertip:0} units between them."
            );
    }

    private static bool IsInside(Spot spot, Picture picture, decimal margin) =>
        IsBetween(spot.X - picture.Origin.Left, margin, picture.Width - margin)
        && IsBetween(spot.Y - picture.Origin.Top, margin, picture.Height - margin);

    private static bool IsBetween(decimal value, decimal from, decimal to) => value >= from && value <= to;

    private static bool AreNearer(Spot one, Spot other, decimal gap) =>
        (one.X - other.X) * (one.X - other.X) + (one.Y - other.Y) * (one.Y - other.Y) < gap * gap;
}
