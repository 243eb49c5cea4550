namespace Academy.Competence.Quizzes;

/// <summary>One question of a module.</summary>
/// <param name="Id">The stable short name; it stays when the words change, so that answers of two editions can be compared.</param>
/// <param name="Text">The question, at most 25 words.</param>
/// <param name="Aim">The code of the aim that it checks.</param>
/// <param name="IsMustKnow">Whether a wrong answer fails the quiz whatever the score.</param>
/// <param name="Options">What can be picked: at least one right and two wrong ones.</param>
/// <param name="Explanation">Why the right answer is right, shown after handing in, with source marks as in the lesson.</param>
public sealed record Question(string Id, string Text, string Aim, bool IsMustKnow, Listed<Option> Options, string Explanation)
{
    /// <summary>Whether more than one option is right, so that all of them have to be picked.</summary>
    public bool SeveralRight => Options.Count(option => option.IsRight) > 1;

    /// <summary>Whether exactly the right options were picked, no more and no fewer.</summary>
    /// <param name="picked">Places in <see cref="Options"/>, counted from 0; a place that does not exist makes it wrong.</param>
    public bool IsAnsweredBy(IEnumerable<int> picked) =>
        Enumerable.Range(0, Options.Count).Where(place => Options[place].IsRight).ToHashSet().SetEquals(picked);
}

/// <summary>One option of a question.</summary>
/// <param name="Text">The option as a person reads it.</param>
/// <param name="IsRight">Whether it belongs to the right answer.</param>
public sealed record Option(string Text, bool IsRight);
