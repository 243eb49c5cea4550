using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Study;

/// <summary>Looking for words in the modules: in their titles, headings and lessons, never in their questions.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class SearchModel(Shelf shelf, ModuleIndex index) : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "q")]
    public string? Words { get; set; }

    public SearchView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) =>
        View = SearchView.Of(Words, shelf, await index.FindAsync(shelf, Words, stop));
}
