using Academy.Competence;
using Academy.Modules;

namespace Academy.Web.Wording;

/// <summary>The titles of the modules that are served, for sentences: <c>Names.Of(book, now, titles.All)</c>.</summary>
public sealed class Titles(ModuleLibrary library)
{
    public IReadOnlyDictionary<ModuleName, string> All { get; } =
        library.Modules.ToDictionary(module => module.Name, module => module.Title);
}
