using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Decisions;

/// <summary>What waits for the owner: who is ready, what soon runs out, who is stuck, what is to be reviewed and answered.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class DecideModel(Who who, RecordBook records, DecideQueries queries, Titles titles, TimeProvider clock)
    : AcademyPage
{
    public DecideView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var waiting = new Waiting(
            await queries.FlaggedAsync(who.Salon, stop),
            await queries.ReviewsAsync(who.Salon, stop),
            await queries.DisputesAsync(who.Salon, stop)
        );

        View = DecideView.Of(team, waiting, Names.Of(who.Book, now, titles.All));
    }
}
