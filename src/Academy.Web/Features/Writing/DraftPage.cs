using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Writing;

/// <summary>A page about one module that is being written.</summary>
public abstract class DraftPage(Who who, DraftQueries desk, Shelf shelf, TimeProvider clock) : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "module")]
    public string Module { get; set; } = "";

    protected Who Who => who;

    protected DraftQueries Desk => desk;

    protected Shelf Shelf => shelf;

    protected DateTimeOffset Now => clock.GetUtcNow();

    protected Names Named => Names.Of(who.Book, Now, shelf.Titles);

    protected Task<Draft?> FindAsync(CancellationToken stop) => desk.FindAsync(Module, stop);

    /// <summary>On to the list, where there is nothing left to look at.</summary>
    protected LocalRedirectResult Gone() =>
        Done(Paths.Modules, "It is not there any more as you saw it: it was published, taken back or thrown away in between.");
}
