using Academy.Modules;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Study;

/// <summary>What the files of the modules ask for: findings with file and line, comparisons past their day, modules that are missing.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class FindingsModel(Who who, Shelf library, Titles titles, TimeProvider clock) : AcademyPage
{
    public FindingsView View { get; private set; } = null!;

    public void OnGet() => View = FindingsView.Of(library, who.Book, Names.Of(who.Book, clock.GetUtcNow(), titles.All));
}
