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

/// <summary>The owner signs: one signature over one or several skills in which a person is ready, each with its own limits.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class PersonModel(Who who, RecordBook records, Ledger ledger, Titles titles, Ids ids)
    : PersonPage(who, records, ledger, titles, ids)
{
    public SignForm Sign { get; set; } = new();

    public PersonDecideView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) => await ShowAsync(stop) ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync([FromForm(Name = nameof(Sign))] SignForm sign, CancellationToken stop)
    {
        if (!await ShowAsync(stop))
            return NotFound();
        Keep(sign);
        if (!await IsSignedAsync(sign, nameof(Sign)))
            return Again();

        var chosen = sign.Skills.Where(one => one.Chosen && StandingIn(one.Skill) is not null).ToList();
        var decision = Clearing.Clear(
            new DecisionId(New()),
            chosen.Select(one => one.Ask(new DecisionId(New()), StandingIn(one.Skill)!)).ToListed(),
            Person,
            Who.Person,
            against: false,
            Words.None,
            Who.Hand.Now,
            Who.Zone
        );

        var done = PersonWords.Signed(Person, [.. chosen.Select(one => Names.Of(new SkillCode(one.Skill)))]);
        return await KeepAsync(decision, SentWith(sign), Paths.DecideOn(Id), done, stop);
    }

    protected override void ShowAt(long version) => ShowAt(Sign, nameof(Sign), version);

    private async Task<bool> ShowAsync(CancellationToken stop)
    {
        if (await ReadAsync(stop) is not { } version)
            return false;

        View = PersonDecideView.Of(Person, Team, Names);
        Sign = Fresh<SignForm>(version);
        Sign.Skills = SkillChoice.Of(Team.Of(Person.Id));
        return true;
    }

    // What may be signed now, with what was typed for it. Where the list has changed, what was typed stands at other places.
    private void Keep(SignForm typed)
    {
        var now = Sign.Skills;
        var isSame = now.Select(choice => choice.Skill).SequenceEqual(typed.Skills.Select(choice => choice.Skill));
        Sign = typed;
        typed.Skills = [.. now.Select(choice => typed.Skills.FirstOrDefault(one => one.Skill == choice.Skill) ?? choice)];
        foreach (
            var moved in ModelState
                .Keys.Where(key => !isSame && key.StartsWith("Sign.Skills[", StringComparison.Ordinal))
                .ToList()
        )
            ModelState.Remove(moved);
    }
}
