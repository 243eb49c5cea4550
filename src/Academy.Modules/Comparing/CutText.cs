namespace Academy.Modules.Comparing;

/// <summary>A question as it was typed.</summary>
internal sealed record TypedQuestion(string Id, IReadOnlyList<string> Lines);

/// <summary>The text of a module cut into what is compared with each other; a text without its fences is all lesson.</summary>
internal sealed record CutText(IReadOnlyList<string> About, IReadOnlyList<string> Lesson, IReadOnlyList<TypedQuestion> Questions)
{
    private const string Fence = "---";
    private const string Quiz = "# Quiz";
    private const string Question = "## ";

    public static CutText Of(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n').Select(line => line.TrimEnd()).ToArray();
        var fence = lines[0] == Fence ? Array.IndexOf(lines, Fence, 1) : -1;
        var quiz = Array.IndexOf(lines, Quiz, fence + 1);
        return new(
            [.. lines[1..Math.Max(fence, 1)].Where(IsWritten)],
            Paragraphs(lines[(fence + 1)..(quiz < 0 ? lines.Length : quiz)]),
            quiz < 0 ? [] : [.. QuestionsOf(lines[(quiz + 1)..])]
        );
    }

    private static IEnumerable<TypedQuestion> QuestionsOf(string[] lines)
    {
        List<string>? current = null;
        var id = "";
        foreach (var line in lines)
            if (line.StartsWith(Question, StringComparison.Ordinal))
            {
                if (current is not null)
                    yield return new(id, Paragraphs(current));
                id = line[Question.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var name, ..] ? name : "";
                current = [line];
            }
            else
                current?.Add(line);
        if (current is not null)
            yield return new(id, Paragraphs(current));
    }

    private static List<string> Paragraphs(IEnumerable<string> lines)
    {
        List<string> paragraphs = [];
        var goesOn = false;
        foreach (var line in lines)
        {
            if (goesOn && GoesOn(line))
                paragraphs[^1] += $" {line.Trim()}";
            else if (IsWritten(line))
                paragraphs.Add(line);
            goesOn = IsWritten(line) && !line.StartsWith('#') && !line.StartsWith('|') && !IsWhole(line);
        }
        return paragraphs;
    }

    // A line goes on with its paragraph unless it begins something: a list, a table, a box, a heading, a part of a question.
    private static bool GoesOn(string line) =>
        IsWritten(line)
        && line.TrimStart()[0] is not ('#' or '-' or '*' or '|' or '>' or '!')
        && !char.IsAsciiDigit(line.TrimStart()[0])
        && !Begins(line);

    // What follows the line with the aim is the question.
    private static bool IsWhole(string line) => line.StartsWith("Aim:", StringComparison.Ordinal);

    private static bool Begins(string line) =>
        (string[])["Aim:", "Because:", "Answer:", "Picture:"] is var parts
        && Array.Exists(parts, part => line.StartsWith(part, StringComparison.Ordinal));

    private static bool IsWritten(string line) => !string.IsNullOrWhiteSpace(line);
}
