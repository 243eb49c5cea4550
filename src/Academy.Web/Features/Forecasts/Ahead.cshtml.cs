using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Forecasts;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Forecasts;

/// <summary>When somebody's rows may be full: her own, or of somebody one may look at.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class AheadModel(Who who, RecordBook records, Titles titles, TimeProvider clock) : AcademyPage
{
    public AheadView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id, CancellationToken stop)
    {
        if (who.Book.Find(new PersonId(id)) is not { } person || !who.Person.MaySee(person))
            return NotFound();

        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var learns = team.Of(person.Id).Where(Outlook.IsAsked).ToList();
        var paths = await PathsAsync(team, learns, now, stop);
        View = AheadView.Of(
            person,
            person.Id == who.Person.Id,
            [.. learns.Select(standing => Row(standing, team, paths))],
            Names.Of(who.Book, now, titles.All)
        );
        return Page();
    }

    // Of everybody who learns one of these skills, for how often such a dog comes is a question about the salon too.
    private Task<ILookup<PathOf, Step>> PathsAsync(
        Team team,
        List<Standing> learns,
        DateTimeOffset now,
        CancellationToken stop
    ) =>
        records.PathsAsync(
            who.Salon,
            [
                .. from standing in learns
                from person in team.People
                where person.Role == Role.Junior || person.Id == standing.Person
                select new PathOf(person.Id, standing.Skill),
            ],
            now,
            stop
        );

    private AheadFound Row(Standing standing, Team team, ILookup<PathOf, Step> paths)
    {
        var profile = who.Book.ThresholdOn(standing.Skill, who.Today).Row!;
        var rate = Outlook.SalonsRateOf(
            team.People.Select(person => Tally.InOrder(paths[new(person.Id, standing.Skill)])),
            who.Today
        );
        var own = Tally.InOrder(paths[new(standing.Person, standing.Skill)]);
        return new(
            standing,
            team.Skills.First(skill => skill.Code == standing.Skill),
            profile.MarksToFill,
            Outlook.Of(own, standing.Tally, profile, rate, who.Today)
        );
    }
}
