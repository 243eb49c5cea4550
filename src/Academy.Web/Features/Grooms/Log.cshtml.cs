using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Grooms;

/// <summary>The one page on which a groom is told: for the first time, or again before anybody has signed it off.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class LogModel(Who who, GroomQueries grooms, Ledger ledger, Ids ids) : AcademyPage
{
    [BindProperty]
    public LogForm Form { get; set; } = new();

    /// <summary>A word why a started groom did not happen.</summary>
    [BindProperty]
    public string? Why { get; set; }

    public LogView View { get; private set; } = null!;

    /// <summary>Whether the page is as the book has it, so that what a device kept of it may be put back.</summary>
    public bool IsFresh { get; private set; }

    public async Task<IActionResult> OnGetAsync(Guid groom, Guid? dog, CancellationToken stop)
    {
        if (await grooms.LayAsync(new(groom), dog is { } id ? new DogId(id) : null, stop) is not { } table)
            return NotFound();
        if (table is { Story.IsSignedOff: true } or { Start.IsAbandoned: true, Story: null })
            return LocalRedirect(Paths.Groom(groom));

        Form = table.Story is { Groom: var told }
            ? LogForm.Told(told, table.Version, ids.New(), ids.New(), who.Zone)
            : LogForm.Usual(table, ids.New(), ids.New());
        IsFresh = true;
        return Show(table);
    }

    public async Task<IActionResult> OnPostAsync(Guid groom, CancellationToken stop)
    {
        if (await LayAsync(groom, stop) is not { } table)
            return NotFound();
        if (new Telling(Form, table, ModelState).Read() is not { } told)
            return Show(table, Again);

        var wasAlone = told.Groom.Watcher is null;
        var then = wasAlone ? await grooms.AsOfAsync(table, told.Groom.StartedAt, stop) : table;
        var alone = wasAlone ? then.MoreThanAlone(told.Groom) : [];
        if (!alone.IsEmpty && !Form.AsItWas)
            return Show(table, Again, alone);

        var decision = told.Decide(table, await grooms.KnownThenAsync(then, told.Groom, stop));
        return decision is Granted granted
            ? await KeepAsync(table, granted, ToldWords.Kept(told.Groom, granted, who.Book), stop)
            : Show(table, () => Again(Say.Reasons(((Refused)decision).Reasons, Names.Of(who.Book, table.Now))));
    }

    /// <summary>One tap writes the time of a check; everything typed is kept, nothing is kept in the book.</summary>
    public async Task<IActionResult> OnPostStampAsync(Guid groom, WelfareCheck? stamp, int? unstamp, CancellationToken stop)
    {
        if (await LayAsync(groom, stop) is not { } table)
            return NotFound();

        ModelState.Clear();
        if (stamp is { } check)
            Form.Stamp(check, table.Now, who.Zone);
        if (unstamp is { } place)
            Form.Unstamp(place);
        return Show(table);
    }

    /// <summary>A groom that was started and never happened.</summary>
    public async Task<IActionResult> OnPostAbandonAsync(Guid groom, CancellationToken stop)
    {
        if (await LayAsync(groom, stop) is not { Start: { } start, Story: null } table)
            return NotFound();
        ModelState.Clear();
        if (string.IsNullOrWhiteSpace(Why))
            ModelState.AddModelError(nameof(Why), "Why: a word is enough");
        if (!ModelState.IsValid || Logging.Abandon(start.Id, start.By, who.Person, new Words(Why!.Trim())) is not Granted granted)
            return Show(table, Again);

        return await KeepAsync(table, granted, $"{table.Dog.Name} is off the table. Nothing was logged.", stop);
    }

    private async Task<IActionResult> KeepAsync(Table table, Granted granted, string done, CancellationToken stop)
    {
        var expected = new Expected(table.Groom.Value, Form.Version);
        if (await ledger.KeepAsync(who.Salon, granted, who.Hand, new(Form.Operation), expected) is not Kept.RecordMovedOn)
            return Done(Paths.Groom(table.Groom.Value), done);

        var now = await LayAsync(table.Groom.Value, stop) ?? table;
        ModelState.AddModelError("", LogHead.MovedOn(now, Names.Of(who.Book, now.Now)));
        ModelState.Remove($"{nameof(Form)}.{nameof(Form.Version)}");
        Form.Version = now.Version;
        return Show(now, MovedOn);
    }

    // Whoever is signed in now must be who opened the form: a tablet goes from hand to hand.
    private async Task<Table?> LayAsync(Guid groom, CancellationToken stop) =>
        Form.By == who.Person.Id.Value ? await grooms.LayAsync(new(groom), new DogId(Form.Dog), stop) : null;

    private PageResult Show(Table table, Func<PageResult>? answer = null, Listed<Reason> alone = default)
    {
        View = LogView.Of(table, Form, alone);
        return answer is null ? Page() : answer();
    }
}
