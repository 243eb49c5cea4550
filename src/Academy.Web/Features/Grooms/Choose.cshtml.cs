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

/// <summary>Which dog: one that is on the table, one that was here today, one found by its name, or one that is new.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class ChooseModel(Who who, GroomQueries grooms, Ledger ledger, Ids ids, TimeProvider clock) : AcademyPage
{
    /// <summary>Name, breed or surname. A search is posted: names do not belong into an address.</summary>
    [BindProperty]
    public string? Words { get; set; }

    /// <summary>The senior who watches, or nobody.</summary>
    [BindProperty]
    public string? Watcher { get; set; }

    [BindProperty]
    public Guid Groom { get; set; }

    [BindProperty]
    public Guid Operation { get; set; }

    /// <summary>The dog that was chosen; while there is none, the list to choose from.</summary>
    public StartView? Start { get; private set; }

    public ChooseView List { get; private set; } = ChooseView.Nothing;

    public WaitingLine Waiting => WaitingLine.Of(who.Person.Id.Value, clock.GetUtcNow());

    public async Task<IActionResult> OnGetAsync(Guid? dog, CancellationToken stop)
    {
        if (dog is not { } chosen)
            return await ListAsync([], stop);
        (Groom, Operation) = (ids.New(), ids.New());
        return await grooms.LayAsync(new(Groom), new DogId(chosen), stop) is { } table ? Show(table) : NotFound();
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop) =>
        await ListAsync(string.IsNullOrWhiteSpace(Words) ? [] : await grooms.FindDogsAsync(Words, stop), stop);

    /// <summary>The dog is on the table.</summary>
    public async Task<IActionResult> OnPostStartAsync(Guid dog, CancellationToken stop)
    {
        if (await grooms.LayAsync(new(Groom), new DogId(dog), stop) is not { } table)
            return NotFound();
        var watcher = table.Watchers.FirstOrDefault(person => person.Id.Value.ToString() == Watcher)?.Id;
        var decision = Logging.Start(table.Groom, table.Dog.Id, who.Person, watcher, table.Now, table.Now, who.Zone);
        return decision is Granted granted
            ? await KeepAsync(table, granted)
            : Show(table, () => Again(Say.Reasons(((Refused)decision).Reasons, Names.Of(who.Book, table.Now))));
    }

    private async Task<IActionResult> KeepAsync(Table table, Granted granted)
    {
        var expected = new Expected(table.Groom.Value, Version: 0);
        await ledger.KeepAsync(who.Salon, granted, who.Hand, new(Operation), expected);
        // Pressed twice, or started and told meanwhile: the page of the groom shows what there is.
        return Done(Paths.Log(table.Groom.Value), $"{table.Dog.Name} is on the table.");
    }

    private async Task<PageResult> ListAsync(IReadOnlyList<DogChoice> found, CancellationToken stop)
    {
        List = ChooseView.Of(await grooms.TodayAsync(stop), found, Words, who.Person, Names.Of(who.Book, clock.GetUtcNow()));
        return Page();
    }

    private PageResult Show(Table table, Func<PageResult>? answer = null)
    {
        Start = StartView.Of(table);
        Watcher ??= Start.Usual;
        return answer is null ? Page() : answer();
    }
}
