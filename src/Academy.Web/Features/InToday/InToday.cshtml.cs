using Academy.Competence;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.InToday;

/// <summary>Who is in today: the dog check answers for them, and a senior in the building is one of them.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class InTodayModel(Who who, RecordBook records, Ledger ledger, Ids ids) : AcademyPage
{
    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    /// <summary>Who is to be ticked.</summary>
    [BindProperty]
    public Guid[] In { get; set; } = [];

    /// <summary>Who was ticked when the page was shown: only what was changed on it is changed, whoever else ticks meanwhile.</summary>
    [BindProperty]
    public Guid[] Shown { get; set; } = [];

    public InTodayView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) => await ReadAsync(stop);

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        await ReadAsync(stop);
        if (!ModelState.IsValid)
            return Again();

        var ticks = Changed()
            .Select(person => Staffing.Tick(person, who.Today, In.Contains(person.Id.Value), who.Person))
            .ToList();

        return ticks.Count == 0
            ? Done(Paths.InToday, "Nothing was changed.")
            : await KeepAsync(ticks.Aggregate((all, one) => all.And(one)));
    }

    private async Task ReadAsync(CancellationToken stop) =>
        View = InTodayView.Of(who.Book, await records.InOnAsync(who.Salon, who.Today, stop), who.Person, who.Time);

    private IEnumerable<Person> Changed() =>
        In.Except(Shown).Concat(Shown.Except(In)).Select(id => who.Book.Find(new PersonId(id))).OfType<Person>();

    private async Task<IActionResult> KeepAsync(Decision decision)
    {
        if (decision is not Granted granted)
            return Again(Say.Reasons(((Refused)decision).Reasons, who.Names));
        await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Operation));
        return Done(Paths.InToday, "The list of today is kept.");
    }
}
