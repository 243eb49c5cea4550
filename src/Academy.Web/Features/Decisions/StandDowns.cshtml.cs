using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Decisions;

/// <summary>Whom the owner or a deputy may stand down, and who is stood down.</summary>
[Authorize(Policy = Policies.Deputy)]
public sealed class StandDownsModel(Who who, RecordBook records) : AcademyPage
{
    public StandDownsView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) =>
        View = StandDownsView.Of(await records.TeamAsync(who.Salon, who.Hand.Now, stop), who.Names);
}
