using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Flags;

/// <summary>Grooms done alone by somebody who was not alone for them, until the owner has spoken about each.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class FlagsModel(Who who, FlagQueries flags) : AcademyPage
{
    /// <summary>How many were shown on the pages before.</summary>
    [BindProperty(SupportsGet = true)]
    public int After { get; set; }

    public FlagsView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        var after = Math.Max(0, After);
        View = FlagsView.Of(
            await flags.OpenAsync(who.Salon, after, stop),
            after,
            await flags.SpokenAsync(who.Salon, stop),
            who.Names
        );
    }
}
