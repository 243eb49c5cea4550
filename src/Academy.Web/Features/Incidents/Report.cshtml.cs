using Academy.Competence;
using Academy.Competence.Facts;
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

/// <summary>Something that went wrong on a groom, or nearly. Anyone who may see the groom may report, also days later.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class ReportModel(Who who, RecordBook records, Ledger ledger, Ids ids) : AcademyPage, IIncidentPage
{
    [BindProperty]
    public Guid Operation { get; set; }

    [BindProperty]
    public IncidentForm Incident { get; set; } = new();

    public IncidentChoices Choices { get; private set; } = IncidentChoices.Nothing;

    public ReportView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id, CancellationToken stop)
    {
        if (await OneGroom.FindAsync(records, who, id, stop) is not { } one)
            return NotFound();

        Operation = ids.New();
        var doers = one.Groom.Doers.ToList();
        Incident = IncidentForm.Empty(ids.New(), doers.Count == 1 ? doers[0].Value : null, one.Names.Time);
        return await ShowAsync(one, Page, stop);
    }

    /// <summary>Without a script: the page again, with everything kept and with what it would do.</summary>
    public async Task<IActionResult> OnPostShowAsync(Guid id, CancellationToken stop) =>
        await OneGroom.FindAsync(records, who, id, stop) is { } one ? await ShowAsync(one, Page, stop) : NotFound();

    /// <summary>With a script: only what it would do.</summary>
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
        if (one.Story.Incidents.Any(told => told.Incident.Id.Value == Incident.Id))
            return Kept(one);
        if (Incident.Read(one.Groom, one.Names.Time, ModelState, nameof(Incident)) is not { } draft)
            return await ShowAsync(one, Again, stop);

        var decision = Reporting.Report(draft, one.Groom, who.Person, who.Book.House, who.Hand.Now);
        return decision is Granted granted
            ? await KeepAsync(granted, one)
            : await RefuseAsync(((Refused)decision).Reasons, one, stop);
    }

    // Two people may report on one groom at once: nothing that stands there is changed by it, so no version is asked.
    private async Task<IActionResult> KeepAsync(Granted granted, OneGroom one)
    {
        await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Operation));
        return Kept(one);
    }

    private LocalRedirectResult Kept(OneGroom one) => Done(Paths.Groom(one.Groom.Id.Value), ReportView.Kept(one));

    private Task<PageResult> RefuseAsync(Listed<Reason> reasons, OneGroom one, CancellationToken stop)
    {
        foreach (var reason in reasons)
            ModelState.AddModelError(FieldOf(reason), Say.Reason(reason, one.Names));
        return ShowAsync(one, Again, stop);
    }

    private static string FieldOf(Reason reason) =>
        reason switch
        {
            WordsNeeded => "Incident.WhatHappened",
            InTheFuture => "Incident.NoticedOn",
            DidNoPart => "Incident.Person",
            _ => "",
        };

    private async Task<PageResult> ShowAsync(OneGroom one, Func<PageResult> answer, CancellationToken stop)
    {
        Choices = IncidentChoices.Of(Incident, one.Groom, one.Names);
        View = ReportView.Of(one, await OutcomeAsync(one, stop));
        return answer();
    }

    private async Task<Outcome> OutcomeAsync(OneGroom one, CancellationToken stop)
    {
        if (Incident.Sketch(one.Groom, one.Names.Time) is not { } draft)
            return Outcome.Nothing;

        var now = who.Hand.Now;
        var after = Reporting.Foresee(draft, one.Story, who.Person, who.Book.House, now);
        var foreseen = await records.ForeseeAsync(who.Salon, who.Book, one.Story, after, [], now, stop);
        var seen = foreseen.Where(path => who.Person.MaySee(who.Book.Find(path.Of.Person)!)).ToList();
        return Outcome.Of(draft, who.Book.House, seen, one.Names);
    }
}
