using Academy.Competence;
using Academy.Competence.Incidents;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Incidents;

/// <summary>The owner upholds a complaint or a redo: one groom that needed fixing.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ComplaintModel(Who who, RecordBook records, Ledger ledger, Ids ids) : AcademyPage
{
    [BindProperty]
    public ComplaintForm Form { get; set; } = new();

    public ComplaintView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id, CancellationToken stop)
    {
        if (await OneGroom.FindAsync(records, who, id, stop) is not { } one)
            return NotFound();

        Form = ComplaintForm.For(one, ids.New());
        return await ShowAsync(one, Page, stop);
    }

    public async Task<IActionResult> OnPostShowAsync(Guid id, CancellationToken stop) =>
        await OneGroom.FindAsync(records, who, id, stop) is { } one ? await ShowAsync(one, Page, stop) : NotFound();

    public async Task<IActionResult> OnPostPreviewAsync(Guid id, CancellationToken stop)
    {
        if (await OneGroom.FindAsync(records, who, id, stop) is not { } one)
            return NotFound();

        await ShowAsync(one, Page, stop);
        return Partial("_Preview", View.Outcome);
    }

    public async Task<IActionResult> OnPostAsync(Guid id, CancellationToken stop)
    {
        if (await OneGroom.FindAsync(records, who, id, stop) is not { } one)
            return NotFound();
        if (Form.Chosen(one.Groom) is not { } person)
            ModelState.AddModelError("Form.Person", "Choose whose groom it was.");
        else if (Reporting.UpholdComplaint(one.Groom, person, Form.Parts(one.Groom), who.Person, Form.Words) is var decision)
            return decision is Granted granted
                ? await KeepAsync(granted, one, stop)
                : await RefuseAsync(((Refused)decision).Reasons, one, stop);
        return await ShowAsync(one, Again, stop);
    }

    private async Task<IActionResult> KeepAsync(Granted granted, OneGroom one, CancellationToken stop)
    {
        var expected = new Expected(one.Groom.Id.Value, Form.Version);
        var kept = await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Form.Operation), expected);
        if (kept is not Kept.RecordMovedOn)
            return Done(Paths.Reviews, $"The complaint on {one.Dog} is upheld: one groom that needed fixing.");

        var now = (await OneGroom.FindAsync(records, who, one.Groom.Id.Value, stop))!;
        ModelState.Clear();
        ModelState.AddModelError("", "Meanwhile something more was told of this groom. Look again, then save.");
        Form.Version = now.Known.Version;
        return await ShowAsync(now, MovedOn, stop);
    }

    private Task<PageResult> RefuseAsync(Listed<Reason> reasons, OneGroom one, CancellationToken stop)
    {
        foreach (var reason in reasons)
            ModelState.AddModelError(reason is WordsNeeded ? "Form.Says" : "", Say.Reason(reason, one.Names));
        return ShowAsync(one, Again, stop);
    }

    private async Task<PageResult> ShowAsync(OneGroom one, Func<PageResult> answer, CancellationToken stop)
    {
        var now = who.Hand.Now;
        var after = Form.Chosen(one.Groom) is { } person
            ? Reporting.ForeseeUpheld(one.Story, person, Form.Parts(one.Groom), now)
            : one.Story;
        View = ComplaintView.Of(one, await records.ForeseeAsync(who.Salon, who.Book, one.Story, after, [], now, stop), Form);
        return answer();
    }
}
