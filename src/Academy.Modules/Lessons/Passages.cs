using System.Text.RegularExpressions;
using Academy.Competence;
using Academy.Modules.Reading;
using Markdig.Syntax;

namespace Academy.Modules.Lessons;

/// <summary>A piece of a lesson in plain words.</summary>
/// <param name="Part">The id of the heading under which it stands; empty for what stands before the first.</param>
/// <param name="Heading">That heading.</param>
/// <param name="Words">Its words, with those of smaller headings, lists and tables.</param>
public sealed record Passage(string Part, string Heading, string Words);

/// <summary>A lesson in plain words, to be searched. No question and no answer is in it.</summary>
public static partial class Passages
{
    /// <summary>What stands before the first heading, with the summary, and then part by part.</summary>
    public static Listed<Passage> Of(Lesson lesson)
    {
        Findings findings = new(lesson.Module.Name.Value);
        List<(Part Part, List<string> Words)> passages = [(new Part("", ""), [lesson.Module.Summary])];
        if (ModuleText.Of(lesson.Text, findings) is { } text && LessonMarkdown.Parse(text.Lesson, findings) is { } page)
            foreach (var block in page.SkipWhile((block, place) => place == 0 && block is HeadingBlock { Level: 1 }))
                if (block is HeadingBlock { Level: <= 2 } && passages.Count <= lesson.Parts.Count)
                    passages.Add((lesson.Parts[passages.Count - 1], []));
                else
                    passages[^1].Words.AddRange(WordsOf(block));
        return
        [
            .. passages.Select(passage => new Passage(
                passage.Part.Id,
                passage.Part.Title,
                string.Join('\n', passage.Words.Where(words => words.Length > 0))
            )),
        ];
    }

    private static IEnumerable<string> WordsOf(Block block) =>
        block switch
        {
            LeafBlock leaf => [Gap().Replace(PlainText.Of(leaf.Inline), "")],
            ContainerBlock container => container.SelectMany(WordsOf),
            _ => [],
        };

    // A mark of a source leaves a space behind.
    [GeneratedRegex(@"\s+(?=[.,;:!?)]|$)", RegexOptions.None, Patience.Milliseconds)]
    private static partial Regex Gap();
}
