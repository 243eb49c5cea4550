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

namespace Academy.Web.Features.SignOffs;

/// <summary>One person's part in one groom, judged by whoever watched; or the sign-off in force, corrected.</summary>
[Authorize(Policy = Policies.Senior)]
public sealed class SignModel(Who who, RecordBook records, Ledger ledger, Ids ids) : AcademyPage, IIncidentPage
{
    [BindProperty(SupportsGet = true)]
    public Guid Groom { get; set; }

    [BindProperty(SupportsGet = true)]
    public Guid Person { get; set; }

    [BindProperty]
    public SignForm Form { get; set; } = new();

    [BindProperty]
    public IncidentForm Incident { get; set; } = new();

    public IncidentChoices Choices { get; private set; } = IncidentChoices.Nothing;

    public SignView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } part)
            return NotFound();

        ModelState.Clear();
        Form = SignForm.For(part, ids.New(), ids.New());
        Incident = IncidentForm.Empty(ids.New(), part.Subject.Id.Value, part.Names.Time);
        return await ShowAsync(part, Page, stop);
    }

    /// <summary>Without a script: the page again, with everything kept and with what it would do.</summary>
    public async Task<IActionResult> OnPostShowAsync(CancellationToken stop) =>
        await FindAsync(stop) is { } part ? await ShowAsync(part, Page, stop) : NotFound();

    /// <summary>With a script: only what it would do.</summary>
    public async Task<IActionResult> OnPostPreviewAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } part)
            return NotFound();

        await ShowAsync(part, Page, stop);
        return Partial("_Preview", View.Preview);
    }

    public async Task<IActionResult> OnPostAllMetAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } part)
            return NotFound();

        ModelState.Clear();
        Form.MeetAll();
        return await ShowAsync(part, Page, stop);
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } part)
            return NotFound();
        if (part.Story.SignOffs.Any(signed => signed.Id.Value == Form.Id))
            return Saved(part);
        if (part.Known.Version != Form.Version)
            return await MovedOnAsync(part, stop);

        Form.Check(ModelState);
        var incident = Incident.IsFilledIn ? Incident.Read(part.Groom, part.Names.Time, ModelState, nameof(Incident)) : null;
        var decision = part.Decide(Form.Draft(part), incident);
        if (decision is Refused { Reasons: var reasons })
            foreach (var reason in reasons)
                ModelState.AddModelError(SignForm.FieldOf(reason), Say.Reason(reason, part.Names));
        return ModelState.IsValid ? await KeepAsync((Granted)decision, part, stop) : await ShowAsync(part, Again, stop);
    }

    private Task<PartToSign?> FindAsync(CancellationToken stop) => PartToSign.FindAsync(records, who, Groom, Person, stop);

    private async Task<IActionResult> KeepAsync(Granted granted, PartToSign part, CancellationToken stop)
    {
        var expected = new Expected(Groom, Form.Version);
        var kept = await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Form.Operation), expected);
        return kept is Kept.RecordMovedOn ? await MovedOnAsync((await FindAsync(stop))!, stop) : Saved(part);
    }

    private LocalRedirectResult Saved(PartToSign part) => Done(Paths.SignOffs, SignView.Kept(part));

    private async Task<IActionResult> MovedOnAsync(PartToSign part, CancellationToken stop)
    {
        ModelState.Clear();
        ModelState.AddModelError("", SignView.MovedOn(part));
        Form.Version = part.Known.Version;
        Form.Replaces = part.InForce?.Id.Value;
        return await ShowAsync(part, MovedOn, stop);
    }

    private async Task<PageResult> ShowAsync(PartToSign part, Func<PageResult> answer, CancellationToken stop)
    {
        var draft = Form.Draft(part);
        var incident = Incident.IsFilledIn ? Incident.Sketch(part.Groom, part.Names.Time) : null;
        var foreseen = await part.ForeseeAsync(records, who.Salon, part.Foresee(draft, incident), stop);
        Choices = IncidentChoices.Of(Incident, part.Groom, part.Names);
        View = SignView.Of(part, draft, incident, part.Decide(draft, incident), foreseen);
        return answer();
    }
}
