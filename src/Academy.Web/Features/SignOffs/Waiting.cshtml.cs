using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.SignOffs;

/// <summary>What waits for a sign-off: those in which I was named, others that I may judge, grooms alone to inspect, late ones.</summary>
[Authorize(Policy = Policies.Senior)]
public sealed class WaitingModel(Who who, RecordBook records, SignOffQueries signOffs) : AcademyPage
{
    /// <summary>Which list alone is shown, further down.</summary>
    [BindProperty(SupportsGet = true)]
    public string? List { get; set; }

    [BindProperty(SupportsGet = true)]
    public string? After { get; set; }

    public WaitingView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        var now = who.Hand.Now;
        var team = await records.TeamAsync(who.Salon, now, stop);
        var from = who.Today.AddDays(-SigningOff.AtMostDays - 1);
        var daysIn = await records.DaysInAsync(who.Salon, who.Person.Id, from, stop);
        View = WaitingView.Of(
            await FindAsync(team, now, stop),
            who.Person.Id,
            daysIn,
            new SkillKinds(who.Book.Skills),
            Names.Of(who.Book, now),
            isFurther: List is not null
        );
        return Page();
    }

    private async Task<WaitingFound> FindAsync(Team team, DateTimeOffset now, CancellationToken stop)
    {
        var alone = team.Of(who.Person.Id).Where(one => one.Kind == StandingKind.Alone).Select(one => one.Skill.Value);
        var border = now.AddDays(-SigningOff.AtMostDays);
        var onTime = new WaitingAsked(who.Salon, who.Person.Id, [.. alone], border, now, WaitingView.Read(After));
        var fresh = onTime with { EndedAfter = now.AddHours(-SigningOff.OnTimeHours) };
        var late = onTime with { EndedAfter = DateTimeOffset.MinValue, EndedBy = border };
        return new(
            Shows("named") ? await signOffs.NamedAsync(onTime, stop) : WaitingPage.None,
            Shows("others") ? await signOffs.OthersAsync(onTime, stop) : WaitingPage.None,
            Shows("alone") ? await signOffs.AloneAsync(fresh, DueOf(team), stop) : WaitingPage.None,
            Shows("late") ? await signOffs.AllAsync(late, stop) : WaitingPage.None
        );
    }

    private bool Shows(string list) => List is null || List == list;

    private static ILookup<Guid, string> DueOf(Team team) =>
        team
            .People.Where(person => person.Role == Role.Junior)
            .SelectMany(person => team.Of(person.Id))
            .Where(standing => Inspecting.IsDue(standing.Tally))
            .ToLookup(standing => standing.Person.Value, standing => standing.Skill.Value);
}
