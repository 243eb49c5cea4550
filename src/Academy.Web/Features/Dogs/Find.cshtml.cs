using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Dogs;

/// <summary>The dogs of the salon, by name. A search is posted: names and surnames do not belong into an address.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class FindModel(Who who, DogQueries dogs, TimeProvider clock) : AcademyPage
{
    /// <summary>Name, breed or surname.</summary>
    [BindProperty]
    public string? Words { get; set; }

    /// <summary>Also those that no longer come.</summary>
    [BindProperty]
    public bool Gone { get; set; }

    /// <summary>The dog after which this page begins.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? After { get; set; }

    public FindView View { get; private set; } = FindView.Nothing;

    public Task OnGetAsync(CancellationToken stop) => ShowAsync(stop);

    public Task OnPostAsync(CancellationToken stop) => ShowAsync(stop);

    private async Task ShowAsync(CancellationToken stop)
    {
        var page = await dogs.FindAsync(who.Salon, Words ?? "", Gone, After, stop);
        View = FindView.Of(page, Words, isFirst: After is null, new SalonTime(who.Zone, clock.GetUtcNow()));
    }
}
