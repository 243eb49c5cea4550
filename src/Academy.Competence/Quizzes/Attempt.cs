namespace Academy.Competence.Quizzes;

/// <summary>What somebody gave as the answer to one question.</summary>
/// <param name="QuestionId">The question's stable short name.</param>
/// <param name="Given">
/// What was given, in the order in which the draw showed it, not in the order of the file: so nothing that the page sends tells
/// what is right.
/// </param>
public sealed record Answer(string QuestionId, Given Given)
{
    /// <summary>An answer that picks places.</summary>
    public Answer(string questionId, Listed<int> picked)
        : this(questionId, new Picked(picked)) { }

    /// <summary>
    /// As an attempt keeps it: the question's name, a colon, what was given: <c>heat-01:0,2</c> or <c>blades-07:=1/8 in</c>.
    /// </summary>
    public string Written => $"{QuestionId}:{Given.Written}";

    /// <summary>The answer that an attempt keeps so.</summary>
    public static Answer Read(string written)
    {
        var colon = written.IndexOf(':', StringComparison.Ordinal);
        return new(written[..colon], Given.Read(written[(colon + 1)..]));
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
