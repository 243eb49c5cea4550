using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Todays;

/// <summary>The first page of the day: what is on the tables, what waits for whom, what is about to change.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class TodayModel(
    Who who,
    RecordBook records,
    TodayQueries today,
    PractiseNextQueries practise,
    Shelf library,
    TimeProvider clock
) : AcademyPage
{
    private const int NewestSignOffs = 3;

    public TodayView View { get; private set; } = null!;

    /// <summary>What seniors found last of a junior's own grooms.</summary>
    public IReadOnlyList<PractiseNext> Practise { get; private set; } = [];

    /// <summary>What presses to be studied; null where nothing does.</summary>
    public StudyNextView? Study { get; private set; }

    public async Task OnGetAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var isIn = await records.InOnAsync(who.Salon, who.Today, stop);
        var morning = SalonDay.End(who.Today.AddDays(-1), who.Zone);
        var only = who.Person.Role == Role.Junior ? who.Person.Id : (PersonId?)null;
        var grooms = await today.GroomsAsync(who.Salon, morning, only, stop);

        var names = Names.Of(who.Book, now, library.Titles);
        View = TodayView.Of(who.Person, who.Book, team, isIn, grooms, await WaitsAsync(team, stop), names);
        var taken = await records.TakenAsync(who.Salon, who.Person.Id, stop);
        Study = StudyNextView.Of(StudyPlan.Of(team.Of(who.Person.Id), who.Book, taken, library.Modules, names));
        if (only is { } junior)
            Practise = await practise.OfAsync(who.Salon, junior, NewestSignOffs, names, stop);
    }

    private async Task<IReadOnlyList<WaitsLine>> WaitsAsync(Team team, CancellationToken stop)
    {
        if (who.Person.Role == Role.Junior)
            return Waits.ForJunior(await today.OwnUnsignedAsync(who.Salon, who.Person.Id, stop));

        var (named, all) = await today.UnsignedAsync(who.Salon, who.Person.Id, stop);
        var drafts = who.Person.MayWriteModules ? Waits.ForWriter(await today.DraftsAsync(who.Salon, who.Person.Id, stop)) : [];
        if (who.Person.Role == Role.Senior)
            return [.. Waits.ForSenior(named, all), .. drafts];

        var (reviews, disputes, flags) = await today.ForTheOwnerAsync(who.Salon, stop);
        var ready = team.People.Sum(person => team.Of(person.Id).Count(standing => standing.Kind == StandingKind.Ready));
        var isNew = !team.People.Any(person => team.Of(person.Id).Any(standing => standing.Kind == StandingKind.Alone));
        return [.. Waits.ForOwner(isNew, ready, reviews, disputes, flags, named, all), .. drafts];
    }
}
