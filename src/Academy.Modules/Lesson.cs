using System.Collections.Immutable;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules.Pictures;

namespace Academy.Modules;

/// <summary>One module as it is served: its record, its page and its pictures.</summary>
/// <param name="Module">The record that quizzes and standings use.</param>
/// <param name="Html">
/// The lesson without its title, safe to put into a page as it is, with the numbered sources at its end. No question and no answer
/// is in it.
/// </param>
/// <param name="SourcesHtml">The numbered sources alone, for a page that shows explanations.</param>
/// <param name="Parts">The headings of the lesson, for a table of contents.</param>
/// <param name="Explanations">For each question's id its explanation as safe HTML, for after handing in.</param>
/// <param name="Pictures">The pictures that the lesson shows and its questions ask about, by file name.</param>
/// <param name="Text">The module's file as it was read, quiz and all: for keeping, never for a page.</param>
public sealed record Lesson(
    Module Module,
    string Html,
    string SourcesHtml,
    Listed<Part> Parts,
    ImmutableDictionary<string, string> Explanations,
    ImmutableDictionary<string, Picture> Pictures,
    string Text
);

/// <summary>One part of a lesson.</summary>
/// <param name="Id">Where it begins on the page: the id of its heading.</param>
/// <param name="Title">Its heading.</param>
public sealed record Part(string Id, string Title);
