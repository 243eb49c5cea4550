using Academy.Competence;
using Academy.Web.Library;

namespace Academy.Web.Wording;

/// <summary>The titles of the modules that are served, for sentences: <c>Names.Of(book, now, titles.All)</c>.</summary>
public sealed class Titles(Shelf shelf)
{
    public IReadOnlyDictionary<ModuleName, string> All => shelf.Titles;
}
