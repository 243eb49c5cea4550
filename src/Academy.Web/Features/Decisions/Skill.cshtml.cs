using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Decisions;

/// <summary>One person and one skill before the owner: against the rules with a reason, or not yet with words.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class SkillModel(Who who, RecordBook records, Ledger ledger, Titles titles, Ids ids)
    : PersonPage(who, records, ledger, titles, ids)
{
    [FromRoute(Name = "skill")]
    public string Skill { get; set; } = "";

    public AgainstForm Against { get; set; } = new();

    public RefuseForm Refuse { get; set; } = new();

    public SkillDecideView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) => await ShowAsync(stop) ? Page() : NotFound();

    public async Task<IActionResult> OnPostAgainstAsync(
        [FromForm(Name = nameof(Against))] AgainstForm against,
        CancellationToken stop
    )
    {
        if (!await ShowAsync(stop))
            return NotFound();
        Against = against;
        if (!await IsSignedAsync(against, nameof(Against)))
            return Again();

        var decision = Clearing.Clear(
            new DecisionId(New()),
            [new ClearanceAsked(new DecisionId(New()), StandingIn(Skill)!, against.Limits.Read())],
            Person,
            Who.Person,
            against: true,
            new Words(against.Reason ?? ""),
            Who.Hand.Now,
            Who.Zone
        );

        var done = PersonWords.Signed(Person, [View.Skill]);
        return await KeepAsync(decision, SentWith(against), Paths.DecideOn(Id), done, stop);
    }

    public async Task<IActionResult> OnPostRefuseAsync(
        [FromForm(Name = nameof(Refuse))] RefuseForm refuse,
        CancellationToken stop
    )
    {
        if (!await ShowAsync(stop))
            return NotFound();
        Refuse = refuse;
        if (!ModelState.IsValid)
            return Again();

        var says = new Words(refuse.Says ?? "");
        var decision = Clearing.Refuse(new DecisionId(New()), Person, new SkillCode(Skill), Who.Person, says);
        return await KeepAsync(decision, SentWith(refuse), Paths.DecideOn(Id), PersonWords.Refused(Person, View.Skill), stop);
    }

    protected override void ShowAt(long version)
    {
        ShowAt(Against, nameof(Against), version);
        ShowAt(Refuse, nameof(Refuse), version);
    }

    private async Task<bool> ShowAsync(CancellationToken stop)
    {
        if (await ReadAsync(stop) is not { } version || StandingIn(Skill) is not { } standing)
            return false;

        View = SkillDecideView.Of(Person, standing, Names);
        Against = Fresh<AgainstForm>(version);
        Refuse = Fresh<RefuseForm>(version);
        return true;
    }
}
