using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Boards;

/// <summary>Why one person stands where she stands in one skill, now or as it was known at a past moment.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class WhyModel(Who who, RecordBook records, WhyQueries queries, Titles titles, TimeProvider clock) : AcademyPage
{
    /// <summary>A past moment by the salon's clock, as 2026-03-03T14:00.</summary>
    [BindProperty(SupportsGet = true)]
    public string? At { get; set; }

    /// <summary>Where the page of grooms before this one ended.</summary>
    [BindProperty(SupportsGet = true)]
    public string? After { get; set; }

    public WhyView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid person, string skill, CancellationToken stop)
    {
        if (
            who.Book.Find(new PersonId(person)) is not { } subject
            || who.Book.Find(new SkillCode(skill)) is not { } of
            || !who.Person.MaySee(subject)
        )
            return NotFound();

        var moment = Moment.Asked(At, clock.GetUtcNow(), who.Zone);
        if (moment.Wrong is { } wrong)
            ModelState.AddModelError(nameof(At), wrong);
        var team = moment.IsPast
            ? await records.TeamAsKnownAsync(who.Salon, moment.At, stop)
            : await records.TeamAsync(who.Salon, moment.At, stop);
        if (team[subject.Id, of.Code] is not { } standing)
            return NotFound();

        View = WhyView.Of(await FindAsync(subject, of, standing, moment, stop), Names.Of(who.Book, moment.At, titles.All));
        return ModelState.IsValid ? Page() : Again();
    }

    private async Task<WhyFound> FindAsync(Person subject, Skill of, Standing standing, Moment moment, CancellationToken stop)
    {
        var asked = new PathAsked(who.Salon, subject.Id, of.Code, moment.At);
        var facts = await records.FactsAboutAsync(who.Salon, subject.Id.Value, stop);
        return new WhyFound(
            who.Person,
            subject,
            of,
            standing,
            who.Book.Thresholds.FirstOrDefault(set => set.Skill == of.Code && set.Version == standing.ThresholdVersion)
                ?? who.Book.ThresholdOn(of.Code, who.Today),
            [.. facts.Where(told => told.RecordedAt <= moment.At)],
            await queries.GroomsAsync(asked, ListPlace.Read(After), stop),
            await queries.StopsAsync(asked, stop),
            moment.IsPast
        );
    }
}
