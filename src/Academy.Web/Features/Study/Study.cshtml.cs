using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Features.Study;

/// <summary>What to study next and why, what is due, and what is passed.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class StudyModel(
    Who who,
    RecordBook records,
    QuizBook quizzes,
    ReadingPlaces places,
    Shelf library,
    Titles titles,
    TimeProvider clock
) : AcademyPage
{
    public StudyView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var names = Names.Of(who.Book, now, titles.All);
        var team = await records.TeamAsync(who.Salon, now, stop);
        var taken = await records.TakenAsync(who.Salon, who.Person.Id, stop);
        var underWay = await quizzes.UnderWayAsync(who.Salon, who.Person.Id, stop);

        var plan = StudyPlan.Of(team.Of(who.Person.Id), who.Book, taken, library.Modules, names);
        var stopped =
            from place in await places.OfAsync(who.Salon, who.Person.Id, stop)
            let lesson = library.Find(place.Module.Value)
            where lesson is not null
            let last = taken.Where(one => one.Module == place.Module).Max(one => (DateTimeOffset?)one.HandedInAt)
            select GoOnLine.Of(place, lesson, last, names.Time);
        View = StudyView.Of(who.Person, plan, underWay, [.. stopped.OfType<GoOnLine>().Take(StudyView.MostPlaces)], names);
    }
}
