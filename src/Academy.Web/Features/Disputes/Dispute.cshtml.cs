using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Disputes;

/// <summary>One sign-off: whoever was judged disputes it, the owner answers, or lets a late one count. Everything stays visible.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class DisputeModel(Who who, RecordBook records, DisputeQueries disputes, Ledger ledger, Ids ids) : AcademyPage
{
    [BindProperty]
    public DisputeForm Form { get; set; } = new();

    public DisputeView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid signOff, CancellationToken stop)
    {
        if (await FindAsync(signOff, stop) is not { } found)
            return NotFound();

        Form = new DisputeForm { Operation = ids.New(), Version = found.One.Known.Version };
        return await ShowAsync(found, Page, stop);
    }

    public Task<IActionResult> OnPostDisputeAsync(Guid signOff, CancellationToken stop) =>
        SayAsync(
            signOff,
            Ask.Dispute,
            found => Disputing.Dispute(found.One.Story, found.Signed, found.Dispute is not null, who.Person, Form.Words),
            found => found.Dispute is { } said && said.By == who.Person.Id && said.Says == Form.Words,
            "The owner sees your dispute and answers it.",
            stop
        );

    public Task<IActionResult> OnPostAnswerAsync(Guid signOff, CancellationToken stop) =>
        SayAsync(
            signOff,
            Ask.Answer,
            found => Disputing.Answer(found.Signed, found.Dispute, who.Person, Overturns, Form.Words),
            found => found.Dispute?.Answer is { } said && said.IsOverturned == Overturns && said.Says == Form.Words,
            "The dispute is answered.",
            stop
        );

    public Task<IActionResult> OnPostAdmitAsync(Guid signOff, CancellationToken stop) =>
        SayAsync(
            signOff,
            Ask.LetCount,
            found => Disputing.AdmitLate(found.One.Story, found.Signed, who.Person, Form.Words),
            found => who.Person.Role == Role.Owner && found.IsAdmitted,
            "The late sign-off counts now.",
            stop
        );

    private bool Overturns => Form.Overturn == bool.TrueString;

    private Task<DisputedSignOff?> FindAsync(Guid signOff, CancellationToken stop) =>
        DisputedSignOff.FindAsync(disputes, records, who, signOff, stop);

    // A form that was sent twice finds its own words there already, and that is as good as done.
    private async Task<IActionResult> SayAsync(
        Guid signOff,
        Ask ask,
        Func<DisputedSignOff, Decision> decide,
        Func<DisputedSignOff, bool> isSaid,
        string done,
        CancellationToken stop
    )
    {
        if (await FindAsync(signOff, stop) is not { } found)
            return NotFound();
        if (isSaid(found))
            return Done(Paths.Dispute(signOff), done);
        if (found.One.Known.Version != Form.Version || (ask != Ask.Answer && !found.IsInForce))
            return await MovedOnAsync(found, stop);

        foreach (var (field, words) in Form.Wrong(ask == Ask.Answer))
            ModelState.AddModelError(field, words);
        var decision = decide(found);
        if (decision is Refused { Reasons: var reasons })
            foreach (var reason in reasons)
                ModelState.AddModelError(reason is WordsNeeded ? "Form.Says" : "", Say.Reason(reason, found.One.Names));
        if (!ModelState.IsValid)
            return await ShowAsync(found, Again, stop);

        var expected = new Expected(found.One.Groom.Id.Value, Form.Version);
        var kept = await ledger.KeepAsync(who.Salon, (Granted)decision, who.Hand, new OperationId(Form.Operation), expected);
        return kept is Kept.RecordMovedOn
            ? await MovedOnAsync((await FindAsync(signOff, stop))!, stop)
            : Done(Paths.Dispute(signOff), done);
    }

    private Task<PageResult> MovedOnAsync(DisputedSignOff found, CancellationToken stop)
    {
        ModelState.Clear();
        ModelState.AddModelError("", DisputeView.MovedOn);
        Form.Version = found.One.Known.Version;
        return ShowAsync(found, MovedOn, stop);
    }

    private async Task<PageResult> ShowAsync(DisputedSignOff found, Func<PageResult> answer, CancellationToken stop)
    {
        var after = found.Foresee(found.AskOf(who.Person));
        var story = found.One.Story;
        var foreseen = await records.ForeseeAsync(who.Salon, who.Book, story, after, [], who.Hand.Now, stop);
        View = DisputeView.Of(found, who.Person, Change.Of(foreseen, found.One.Names));
        return answer();
    }
}
