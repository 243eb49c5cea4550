using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Incidents;

/// <summary>What waits for the owner's review: what stops clearances first, the oldest first.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ReviewsModel(Who who, IncidentQueries incidents) : AcademyPage
{
    /// <summary>The last critical incident of the page before.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? Critical { get; set; }

    /// <summary>The last of the others of the page before.</summary>
    [BindProperty(SupportsGet = true)]
    public Guid? Other { get; set; }

    public ReviewsView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        var critical = await incidents.OpenAsync(who.Salon, isCritical: true, Critical, stop);
        var others = await incidents.OpenAsync(who.Salon, isCritical: false, Other, stop);
        View = ReviewsView.Of(critical, others, await incidents.ReviewedAsync(who.Salon, stop), who.Names);
    }
}
