using System.Globalization;
using Academy.Competence.Quizzes;

namespace Academy.Web.Tests.Features.Quizzes;

/// <summary>An answer as the form of its question takes it.</summary>
internal static class Typing
{
    public static IEnumerable<(string Name, string Value)> Of(QuestionKind kind, Given given) =>
        (kind, given) switch
        {
            (Number, Typed typed) => [("Typed", typed.Text)],
            (InOrder or Matching, Picked picked) => picked.Places.Select((place, row) => ($"Placed[{row}]", Written(place))),
            (_, Picked picked) => picked.Places.Select(place => ("Picked", Written(place))),
            _ => throw new InvalidOperationException($"{kind} is not answered by {given}."),
        };

    private static string Written(int place) => place.ToString(CultureInfo.InvariantCulture);
}
