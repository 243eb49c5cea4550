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

/// <summary>The owner's review of one incident: who was responsible, and whether technique contributed.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ReviewModel(Who who, RecordBook records, IncidentQueries incidents, Ledger ledger, Ids ids) : AcademyPage
{
    [BindProperty]
    public ReviewForm Form { get; set; } = new();

    public ReviewView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid incident, CancellationToken stop)
    {
        if (await FindAsync(incident, stop) is not { } found)
            return NotFound();

        Form = new ReviewForm { Operation = ids.New(), Version = found.One.Known.Version };
        return await ShowAsync(found, Page, stop);
    }

    public async Task<IActionResult> OnPostShowAsync(Guid incident, CancellationToken stop) =>
        await FindAsync(incident, stop) is { } found ? await ShowAsync(found, Page, stop) : NotFound();

    public async Task<IActionResult> OnPostPreviewAsync(Guid incident, CancellationToken stop)
    {
        if (await FindAsync(incident, stop) is not { } found)
            return NotFound();

        await ShowAsync(found, Page, stop);
        return Partial("_Preview", View.Outcome);
    }

    public async Task<IActionResult> OnPostAsync(Guid incident, CancellationToken stop)
    {
        if (await FindAsync(incident, stop) is not { } found)
            return NotFound();

        var (one, told) = found;
        if (Form.IsKept(told.Review, who.Person))
            return Saved(one);
        if (one.Known.Version != Form.Version)
            return await MovedOnAsync(incident, stop);

        foreach (var (field, words) in Form.Wrong(told.Incident.IsCritical, IsHere))
            ModelState.AddModelError(field, words);
        var decision = Reporting.Review(told, who.Person, Form.Person, Form.IsTechnique, Form.Words, who.Hand.Now);
        if (decision is Refused { Reasons: var reasons })
            foreach (var reason in reasons)
                ModelState.AddModelError(reason is WordsNeeded ? "Form.Found" : "", Say.Reason(reason, one.Names));
        return ModelState.IsValid ? await KeepAsync((Granted)decision, one, incident, stop) : await ShowAsync(found, Again, stop);
    }

    private async Task<(OneGroom One, IncidentStory Told)?> FindAsync(Guid incident, CancellationToken stop)
    {
        if (await incidents.GroomOfAsync(who.Salon, incident, stop) is not { } groom)
            return null;

        var one = (await OneGroom.FindAsync(records, who, groom, stop))!;
        return (one, one.Story.Incidents.First(told => told.Incident.Id.Value == incident));
    }

    private bool IsHere(PersonId person) => who.Book.Find(person) is not null;

    private async Task<IActionResult> KeepAsync(Granted granted, OneGroom one, Guid incident, CancellationToken stop)
    {
        var expected = new Expected(one.Groom.Id.Value, Form.Version);
        var kept = await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Form.Operation), expected);
        return kept is Kept.RecordMovedOn ? await MovedOnAsync(incident, stop) : Saved(one);
    }

    private LocalRedirectResult Saved(OneGroom one) => Done(Paths.Reviews, $"The incident with {one.Dog} is reviewed.");

    private async Task<IActionResult> MovedOnAsync(Guid incident, CancellationToken stop)
    {
        var found = (await FindAsync(incident, stop))!.Value;
        ModelState.Clear();
        ModelState.AddModelError("", "Meanwhile something more was told of this groom. Look again, then save.");
        Form.Version = found.One.Known.Version;
        return await ShowAsync(found, MovedOn, stop);
    }

    private async Task<PageResult> ShowAsync(
        (OneGroom One, IncidentStory Told) found,
        Func<PageResult> answer,
        CancellationToken stop
    )
    {
        var (one, told) = found;
        var now = who.Hand.Now;
        var after = Reporting.Foresee(told.Incident.Id, one.Story, who.Person, Form.Person, Form.IsTechnique, now);
        var foreseen = Form.IsChosen ? await records.ForeseeAsync(who.Salon, who.Book, one.Story, after, [], now, stop) : [];
        var outcome = ReviewView.OutcomeOf(Form, told.Incident.IsCritical, foreseen, one.Names);
        var here = who.Book.People.Where(person => person.WorksOn(who.Today)).ToList();
        View = ReviewView.Of(one, told, here, outcome);
        return answer();
    }
}
