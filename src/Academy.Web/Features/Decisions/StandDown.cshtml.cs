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

namespace Academy.Web.Features.Decisions;

/// <summary>Standing one person down and lifting it, by the owner or a named deputy.</summary>
[Authorize(Policy = Policies.Deputy)]
public sealed class StandDownModel(Who who, RecordBook records, Ledger ledger, Titles titles, Ids ids)
    : PersonPage(who, records, ledger, titles, ids)
{
    public StopForm Stop { get; set; } = new();

    public StopForm Lift { get; set; } = new();

    public StandDownView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) => await ShowAsync(stop) ? Page() : NotFound();

    public async Task<IActionResult> OnPostStopAsync([FromForm(Name = nameof(Stop))] StopForm form, CancellationToken stop)
    {
        if (!await ShowAsync(stop))
            return NotFound();
        Stop = form;
        return await DoAsync(form, nameof(Stop), StandingDown.Stop, PersonWords.Stopped, stop);
    }

    public async Task<IActionResult> OnPostLiftAsync([FromForm(Name = nameof(Lift))] StopForm form, CancellationToken stop)
    {
        if (!await ShowAsync(stop))
            return NotFound();
        Lift = form;
        return await DoAsync(form, nameof(Lift), StandingDown.Lift, PersonWords.Lifted, stop);
    }

    protected override void ShowAt(long version)
    {
        ShowAt(Stop, nameof(Stop), version);
        ShowAt(Lift, nameof(Lift), version);
    }

    private async Task<IActionResult> DoAsync(
        StopForm form,
        string name,
        Func<DecisionId, Standing, Person, Words, DateTimeOffset, Decision> decide,
        Func<Person, IReadOnlyList<string>, string> done,
        CancellationToken stop
    )
    {
        if (!await IsSignedAsync(form, name))
            return Again();

        var standings = form.Skills!.Select(StandingIn).OfType<Standing>().ToList();
        if (standings.Count == 0)
            return NotFound();
        var decision = standings
            .Select(standing => decide(new DecisionId(New()), standing, Who.Person, new Words(form.Reason ?? ""), Who.Hand.Now))
            .Aggregate((all, one) => all.And(one));

        var said = done(Person, [.. standings.Select(standing => Names.Of(standing.Skill))]);
        return await KeepAsync(decision, SentWith(form), Paths.StandDown(Id), said, stop);
    }

    private async Task<bool> ShowAsync(CancellationToken stop)
    {
        if (await ReadAsync(stop) is not { } version)
            return false;

        View = StandDownView.Of(Person, Team, Names);
        Stop = Fresh<StopForm>(version);
        Lift = Fresh<StopForm>(version);
        return true;
    }
}
