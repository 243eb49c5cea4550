using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.People;

/// <summary>What somebody could do before: declared by the owner, or known from work elsewhere.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ExperienceModel(Who who, RecordBook records, Ledger ledger, Ids ids) : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "id")]
    public Guid Id { get; set; }

    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    public DeclaredForm Declared { get; set; } = new() { On = who.Today };

    public ElsewhereForm Elsewhere { get; set; } = new();

    public ExperienceView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) => await ReadAsync(stop) is null ? NotFound() : Page();

    public async Task<IActionResult> OnPostDeclareAsync(
        [FromForm(Name = nameof(Declared))] DeclaredForm declared,
        CancellationToken stop
    )
    {
        Declared = declared;
        if (await ReadAsync(stop) is not var (person, team))
            return NotFound();
        if (!ModelState.IsValid)
            return Again();

        var standings = declared.Standings(team, person);
        if (standings.Count == 0)
        {
            ModelState.AddModelError($"{nameof(Declared)}.{nameof(declared.Skills)}", "Skills: choose at least one");
            return Again();
        }

        var decision = standings.Select(standing => Declare(standing, person, team)).Aggregate((all, one) => all.And(one));

        return await KeepAsync(decision, $"Declared for {person.Name}: {Counts.And(declared.Names(who.Names))}.");
    }

    public async Task<IActionResult> OnPostElsewhereAsync(
        [FromForm(Name = nameof(Elsewhere))] ElsewhereForm elsewhere,
        CancellationToken stop
    )
    {
        Elsewhere = elsewhere;
        if (await ReadAsync(stop) is not var (person, _))
            return NotFound();
        if (!ModelState.IsValid)
            return Again();

        var decision = Clearing.WorkedElsewhere(
            new DecisionId(ids.New()),
            person,
            new SkillCode(elsewhere.Skill!),
            who.Person,
            elsewhere.On!.Value,
            elsewhere.Grooms!.Value,
            new Words(elsewhere.Source ?? ""),
            who.Hand.Now,
            who.Zone
        );

        return await KeepAsync(decision, $"Work elsewhere is noted for {person.Name}; it counts for recency only.");
    }

    private async Task<(Person Person, Team Team)?> ReadAsync(CancellationToken stop)
    {
        if (who.Book.Find(new PersonId(Id)) is not { } person || !person.WorksOn(who.Today))
            return null;
        var team = await records.TeamAsync(who.Salon, who.Hand.Now, stop);
        View = ExperienceView.Of(person, team);
        return (person, team);
    }

    private Decision Declare(Standing standing, Person person, Team team) =>
        Clearing.Declare(
            new DecisionId(ids.New()),
            standing,
            team.AloneIn(standing.Skill).Any(),
            person,
            who.Person,
            Declared.On!.Value,
            new Words(Declared.Reason ?? ""),
            who.Hand.Now,
            who.Zone
        );

    private async Task<IActionResult> KeepAsync(Decision decision, string done)
    {
        if (decision is not Granted granted)
            return Again(Say.Reasons(((Refused)decision).Reasons, who.Names));
        await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Operation));
        return Done(Paths.Person(Id), done);
    }
}
