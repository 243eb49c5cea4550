using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Forecasts;

/// <summary>How many of the clearances in force are probably wrong, and how that is known.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class TrustModel(Who who, RecordBook records, TimeProvider clock) : AcademyPage
{
    public TrustView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var trust = Competence.Forecasts.Trust.Of(team, skill => who.Book.ThresholdOn(skill, who.Today));
        View = TrustView.Of(trust, skill => who.Book.ThresholdOn(skill, who.Today).Row!, Names.Of(who.Book, now));
    }
}
