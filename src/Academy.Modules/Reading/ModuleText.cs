using System.Text.RegularExpressions;

namespace Academy.Modules.Reading;

/// <summary>A module file cut into its three parts, every line still at its own number.</summary>
internal sealed partial record ModuleText(string[] Lines, int FrontMatterEnd, int QuizStart)
{
    public const int LargestFile = 128 * 1024;
    public const int LongestLine = 4000;

    /// <summary>Lines between the two fences; the first of them is line 2 of the file.</summary>
    public string FrontMatter => string.Join('\n', Lines[1..FrontMatterEnd]);

    /// <summary>The lesson alone: blank lines stand where the front matter and the quiz are, so that line numbers stay.</summary>
    public string Lesson => new string('\n', FrontMatterEnd + 1) + string.Join('\n', Lines[(FrontMatterEnd + 1)..QuizStart]);

    /// <summary>The lines of the quiz after its heading, each with its number in the file.</summary>
    public IEnumerable<(int Line, string Text)> Quiz =>
        Lines.Index().Skip(QuizStart + 1).Select(line => (line.Index + 1, line.Item));

    public static ModuleText? Of(string text, Findings findings)
    {
        var lines = text.Split('\n');
        CheckLines(lines, findings);
        var fence = lines[0].TrimEnd() == "---" ? Array.FindIndex(lines, 1, line => line.TrimEnd() == "---") : -1;
        if (fence < 0)
            findings.Broken(
                1,
                "There is no front matter. Begin the file with a line of three hyphens, the keys, and three hyphens again."
            );
        var quiz = Array.FindIndex(lines, Math.Max(fence, 0), line => line.TrimEnd() == "# Quiz");
        if (quiz < 0)
            findings.Broken(lines.Length, "There is no quiz. Put a line \"# Quiz\" after the lesson and the questions below it.");
        return findings.AnyBroken ? null : new(lines, fence, quiz);
    }

    /// <summary>A misspelt quiz heading would put the answers into the page; then the page is not made at all.</summary>
    public void CheckLessonHoldsNoAnswer(Findings findings)
    {
        foreach (var (index, line) in Lines.Index().Take(QuizStart).Skip(FrontMatterEnd + 1))
        {
            if (QuizLine().IsMatch(line))
                findings.Broken(index + 1, "This line of a quiz stands in the lesson. Move it below the line \"# Quiz\".");
        }
    }

    private static void CheckLines(string[] lines, Findings findings)
    {
        foreach (var (index, line) in lines.Index())
        {
            if (line.Length > LongestLine)
                findings.Broken(
                    index + 1,
                    $"The line has {line.Length} characters; {LongestLine} are the most. Break it into paragraphs."
                );
            else if (Unseen().IsMatch(line))
                findings.Broken(index + 1, "The line holds a character that cannot be seen. Type the line again.");
        }
    }

    [GeneratedRegex(
        @"^\W*((Right|Wrong)( at [^:]*)?|Because|Aim|Pair|Spare|Answer):",
        RegexOptions.ExplicitCapture,
        Patience.Milliseconds
    )]
    private static partial Regex QuizLine();

    // Control characters but the tab, and those that turn the direction of writing round.
    [GeneratedRegex(
        @"[\x00-\x08\x0B-\x1F\x7F-\x9F\u202A-\u202E\u2066-\u2069]",
        RegexOptions.ExplicitCapture,
        Patience.Milliseconds
    )]
    private static partial Regex Unseen();
}
