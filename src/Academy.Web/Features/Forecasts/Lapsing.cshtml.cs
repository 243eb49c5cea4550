using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Forecasts;

/// <summary>What runs out in the next 30 days, with the dogs on which it could be kept fresh.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class LapsingModel(Who who, RecordBook records, LapsingQueries queries, Titles titles, TimeProvider clock)
    : AcademyPage
{
    public LapsingView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var lapsing = LapsingView.Lapsing(team, who.Today).ToList();
        var coats = lapsing.Select(one => one.Standing.Skill.Value).Distinct(StringComparer.Ordinal).ToArray();
        View = LapsingView.Of(lapsing, await queries.DogsAsync(who.Salon, coats, stop), Names.Of(who.Book, now, titles.All));
    }
}
