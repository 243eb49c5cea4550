using System.Collections.Immutable;
using Academy.Competence.Quizzes;
using Academy.Modules.Pictures;
using Academy.Modules.Reading;
using Markdig.Syntax;

namespace Academy.Modules.Lessons;

/// <summary>Makes the page of a module from its text.</summary>
internal sealed class LessonWriter(FrontMatter front, IReadOnlyDictionary<string, Picture> pictures, Findings findings)
{
    private readonly LessonTree _tree = new(front.Module.Name.Value, pictures, front.SourceLines.Keys.ToHashSet(), findings);

    /// <summary>The lesson, or null where its Markdown cannot be read.</summary>
    /// <param name="text">The whole file, for its fingerprint.</param>
    /// <param name="lesson">The lesson's part of it, every line at its number.</param>
    /// <param name="questions">The questions, each with the line it begins on.</param>
    public Lesson? Write(string text, string lesson, IReadOnlyList<(Question Question, int Line)> questions)
    {
        if (Page(lesson) is not { } page)
            return null;
        Part[] parts = [.. _tree.Parts];
        var explanations = questions.ToImmutableDictionary(entry => entry.Question.Id, Explanation, StringComparer.Ordinal);
        var asked = SpotCheck.Of(questions, pictures, findings);
        HashSet<string> seen = [.. _tree.Shown, .. asked];
        CheckAllUsed(seen);

        var shown = pictures.Where(picture => seen.Contains(picture.Key)).ToImmutableDictionary(StringComparer.Ordinal);
        var sources = SourceList.Html(front.Module.Sources);
        SafeHtml.Look(sources, findings);
        var module = front.Module with
        {
            Hash = ContentHash.Of(text, shown.Values),
            Questions = [.. questions.Select(entry => entry.Question)],
        };
        return new(module, new(page, sources, explanations), [.. parts], shown, text);
    }

    private string? Page(string lesson)
    {
        if (LessonMarkdown.Parse(lesson, findings) is not { } page)
            return null;
        TakeTitle(page);
        LessonCheck.Html(lesson, findings);
        LessonCheck.Of(page, findings);
        return Html(page);
    }

    private void TakeTitle(MarkdownDocument page)
    {
        if (page is not [HeadingBlock { Level: 1 } heading, ..])
        {
            findings.Fault(0, "The lesson has to begin with its title: \"# \" and the same words as in the front matter.");
            return;
        }
        if (PlainText.Of(heading.Inline) != front.Module.Title)
            findings.Fault(
                heading.Line + 1,
                $"The heading is not the title of the front matter, \"{front.Module.Title}\". Make them the same."
            );
        page.Remove(heading);
    }

    private string Explanation((Question Question, int Line) entry)
    {
        using var _ = findings.Below(entry.Line - 1);
        var text = entry.Question.Explanation;
        if (LessonMarkdown.Parse(text, findings) is not { } words)
            return "";
        LessonCheck.Html(text, findings);
        return Html(words);
    }

    private string Html(MarkdownDocument words)
    {
        _tree.Prepare(words);
        var html = LessonMarkdown.Html(words, findings);
        SafeHtml.Look(html, findings);
        return html;
    }

    private void CheckAllUsed(HashSet<string> seen)
    {
        foreach (var (source, line) in front.SourceLines.Where(source => !_tree.Cited.Contains(source.Key)))
            findings.Fault(line, $"Source {source} is never cited. Cite it with [{source}] or take it out.");
        foreach (var picture in pictures.Keys.Where(picture => !seen.Contains(picture)))
            findings.Fault(
                0,
                $"The picture \"{picture}\" is not shown in the lesson and no question asks about it. Show it or take it out of the folder."
            );
    }
}
