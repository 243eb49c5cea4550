using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Writing;

/// <summary>A module that is being written.</summary>
public sealed record BeingWritten(string Title, string Stand, string Button, string Href, bool IsForMe);

/// <summary>A module that can be changed.</summary>
/// <param name="Href">Where it is being written; null where nobody has begun.</param>
public sealed record ModuleLine(string Name, string Title, string Words, string Lesson, string? Href);

/// <summary>What is being written in the salon, and what can be changed.</summary>
public sealed record ModulesView(string Heading, IReadOnlyList<BeingWritten> Drafts, IReadOnlyList<ModuleLine> Modules)
{
    public static ModulesView Of(IReadOnlyList<DraftLine> drafts, Shelf shelf, PersonId me, Names names) =>
        new(
            drafts.Count == 0
                ? "No module is being written"
                : $"{Counts.Of(drafts.Count, "module")} {(drafts.Count == 1 ? "is" : "are")} being written",
            [.. drafts.Select(draft => LineOf(draft, me, names)).OrderByDescending(draft => draft.IsForMe)],
            [
                .. shelf
                    .Lessons.OrderBy(lesson => lesson.Module.Title, StringComparer.OrdinalIgnoreCase)
                    .Select(lesson => LineOf(lesson.Module, shelf, drafts)),
            ]
        );

    private static BeingWritten LineOf(DraftLine draft, PersonId me, Names names)
    {
        var (name, isMine) = (draft.Module.Value, draft.Author == me);
        var title = names.Titles.GetValueOrDefault(draft.Module, name);
        var stand = DraftWords.Stand(draft, names);
        return draft.AskedAt is null
            ? new(title, stand, isMine ? "Go on writing" : "Look at it", Paths.Write(name), isMine)
            : new(title, stand, isMine ? "Look at it" : "Read it over", Paths.ReadOver(name), !isMine);
    }

    private static ModuleLine LineOf(Module module, Shelf shelf, IReadOnlyList<DraftLine> drafts)
    {
        var name = module.Name.Value;
        return new(
            name,
            module.Title,
            $"Edition {module.Edition}, {(shelf.Own.ContainsKey(name) ? "written here" : "from the library")}.",
            Paths.Module(name),
            drafts.Any(draft => draft.Module == module.Name) ? Paths.Write(name) : null
        );
    }
}
