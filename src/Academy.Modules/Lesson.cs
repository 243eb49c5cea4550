using System.Collections.Immutable;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules.Lessons;
using Academy.Modules.Pictures;

namespace Academy.Modules;

/// <summary>One module as it is served: its record, its page and its pictures.</summary>
/// <remarks>
/// Its pages pass the gate when somebody asks for the first of them, and are kept with it. Everything that can be found wrong in
/// them was found when the lesson was read.
/// </remarks>
public sealed class Lesson
{
    private readonly WrittenPages _pages;

    internal Lesson(
        Module module,
        WrittenPages pages,
        Listed<Part> parts,
        ImmutableDictionary<string, Picture> pictures,
        string text
    ) => (Module, _pages, Parts, Pictures, Text) = (module, pages, parts, pictures, text);

    /// <summary>The record that quizzes and standings use.</summary>
    public Module Module { get; }

    /// <summary>
    /// The lesson without its title, safe to put into a page as it is, with the numbered sources at its end. No question and no
    /// answer is in it.
    /// </summary>
    public string Html => _pages.Lesson;

    /// <summary>The numbered sources alone, for a page that shows explanations.</summary>
    public string SourcesHtml => _pages.Sources;

    /// <summary>For each question's id its explanation as safe HTML, for after handing in.</summary>
    public ImmutableDictionary<string, string> Explanations => _pages.Explanations;

    /// <summary>The headings of the lesson, for a table of contents.</summary>
    public Listed<Part> Parts { get; }

    /// <summary>The pictures that the lesson shows and its questions ask about, by file name.</summary>
    public ImmutableDictionary<string, Picture> Pictures { get; }

    /// <summary>The module's file as it was read, quiz and all: for keeping, never for a page.</summary>
    public string Text { get; }
}

/// <summary>One part of a lesson.</summary>
/// <param name="Id">Where it begins on the page: the id of its heading.</param>
/// <param name="Title">Its heading.</param>
public sealed record Part(string Id, string Title);
