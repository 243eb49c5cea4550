using Academy.Competence.Forecasts;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Forecasts;

/// <summary>Who covers which skill, today and in the coming months, with everybody there or without some.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class CoverModel(Who who, RecordBook records, TimeProvider clock) : AcademyPage
{
    /// <summary>People who are thought to be away.</summary>
    [BindProperty(SupportsGet = true)]
    public string[] Without { get; set; } = [];

    public CoverView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var away = team.People.Where(person => Without.Contains(person.Id.Value.ToString(), StringComparer.OrdinalIgnoreCase));
        View = CoverView.Of(SkillCover.Of(team), team.People, [.. away.Select(person => person.Id)], Names.Of(who.Book, now));
    }
}
