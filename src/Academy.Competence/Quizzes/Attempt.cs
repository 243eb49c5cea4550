using System.Globalization;

namespace Academy.Competence.Quizzes;

/// <summary>What somebody picked for one question.</summary>
/// <param name="QuestionId">The question's stable short name.</param>
/// <param name="Picked">
/// Places of the picked options, counted from 0, in the order in which the draw showed them, not in the order of the file:
/// so nothing that the page sends tells which option is right.
/// </param>
public sealed record Answer(string QuestionId, Listed<int> Picked)
{
    /// <summary>As an attempt keeps it: the question's name, a colon, the places with commas between, such as <c>heat-01:0,2</c>.</summary>
    public string Written => string.Create(CultureInfo.InvariantCulture, $"{QuestionId}:{string.Join(',', Picked)}");

    /// <summary>The answer that an attempt keeps so.</summary>
    public static Answer Read(string written)
    {
        var (question, places) = (written[..written.IndexOf(':')], written[(written.IndexOf(':') + 1)..]);
        return new(
            question,
            places
                .Split(',', StringSplitOptions.RemoveEmptyEntries)
                .Select(place => int.Parse(place, CultureInfo.InvariantCulture))
                .ToListed()
        );
    }
}

/// <summary>What came of an attempt.</summary>
/// <param name="Right">How many questions were answered right.</param>
/// <param name="Of">How many were asked.</param>
/// <param name="Wrong">The ids of the others, in the order in which they were asked.</param>
/// <param name="MustKnowWrong">Those among <paramref name="Wrong"/> that are must-know.</param>
/// <param name="HasPassed">Whether the pass mark was reached and every must-know question was right.</param>
public sealed record Result(int Right, int Of, Listed<string> Wrong, Listed<string> MustKnowWrong, bool HasPassed);

/// <summary>As much of one earlier attempt at a module as the rules about the next one ask for.</summary>
/// <param name="HandedInAt">The moment at which it was handed in.</param>
/// <param name="HasPassed">Whether it was passed.</param>
public sealed record Attempt(DateTimeOffset HandedInAt, bool HasPassed);
