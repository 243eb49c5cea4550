using Academy.Competence;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.OwnSkills;

/// <summary>One person's skills, under two addresses: one's own, and those of somebody one may look at.</summary>
public abstract class SkillsPage(Who who, RecordBook records, SkillsQueries queries, Titles titles, TimeProvider clock)
    : AcademyPage
{
    /// <summary>Where the page of grooms before this one ended.</summary>
    [BindProperty(SupportsGet = true)]
    public string? After { get; set; }

    public SkillsView View { get; private set; } = null!;

    protected Who Who => who;

    protected async Task<PageResult> ShowAsync(Person person, CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var grooms = await queries.GroomsAsync(who.Salon, person.Id, ListPlace.Read(After), stop);
        var stories = await records.StoriesAsync(who.Salon, [.. grooms.Select(line => new GroomId(line.Groom))], stop);
        var disputes = await queries.DisputesAsync(who.Salon, person.Id, stop);

        View = SkillsView.Of(
            new SkillsFound(person, person.Id == who.Person.Id, who.Seat == Seat.Owner, team, grooms, stories, disputes),
            Names.Of(who.Book, now, titles.All)
        );
        return Page();
    }
}
