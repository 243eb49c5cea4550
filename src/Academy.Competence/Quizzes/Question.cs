namespace Academy.Competence.Quizzes;

/// <summary>One question of a module.</summary>
/// <param name="Id">The stable short name; it stays when the words change, so that answers of two editions can be compared.</param>
/// <param name="Text">The question, at most 25 words; for <see cref="TrueOrFalse"/> a statement.</param>
/// <param name="Aim">The code of the aim that it checks.</param>
/// <param name="IsMustKnow">Whether a wrong answer fails the quiz whatever the score.</param>
/// <param name="Kind">What has to be done to answer it, and what is right.</param>
/// <param name="Explanation">Why the right answer is right, shown after handing in, with source marks as in the lesson.</param>
public sealed record Question(string Id, string Text, string Aim, bool IsMustKnow, QuestionKind Kind, string Explanation)
{
    /// <summary>Whether this answers the question right and whole; there is no part of a right answer.</summary>
    public bool IsAnsweredBy(Given given) => Kind.IsAnsweredBy(given);
}
