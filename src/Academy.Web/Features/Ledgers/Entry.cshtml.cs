using System.Globalization;
using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Ledgers;

/// <summary>Why words are erased, with a signature.</summary>
public sealed class EraseForm
{
    private const int MostLetters = 500;

    public Guid Operation { get; set; }

    public string? Why { get; set; }

    public string? Password { get; set; }

    /// <summary>What is wrong with it as a form; null where nothing is.</summary>
    public string? Wrong => Why?.Length > MostLetters ? $"Why: at most {MostLetters} letters" : null;
}

/// <summary>One entry of the ledger with the words beside it, which the owner may erase.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class EntryModel(Who who, LedgerQueries queries, Ledger ledger, Ids ids) : KeepingPage(who, ledger)
{
    [FromRoute(Name = "entry")]
    public string Number { get; set; } = "";

    [BindProperty]
    public EraseForm Form { get; set; } = new();

    public EntryView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (await ShowAsync(stop) is null)
            return NotFound();
        Form = new EraseForm { Operation = ids.New() };
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        if (await ShowAsync(stop) is not { } hasWords)
            return NotFound();
        if (Form.Wrong is { } wrong)
            ModelState.AddModelError("Form.Why", wrong);
        if (ModelState.IsValid && !await Who.ConfirmAsync(Form.Password))
            ModelState.AddModelError("Form.Password", Who.Unconfirmed!);
        if (!ModelState.IsValid)
            return Again();

        var entry = View.Line.Number;
        return await KeepAsync(
            Keeping.EraseWords(entry, hasWords, Who.Person, new Words(Form.Why?.Trim() ?? "")),
            Form.Operation,
            Paths.LedgerEntry(entry),
            $"The words of entry {entry} are erased.",
            stop
        );
    }

    /// <summary>Whether the entry holds words that may be erased; null where there is no such entry.</summary>
    private async Task<bool?> ShowAsync(CancellationToken stop)
    {
        if (!long.TryParse(Number, NumberStyles.None, CultureInfo.InvariantCulture, out var seq))
            return null;
        if (await queries.EntryAsync(Who.Salon, seq, stop) is not { } entry)
            return null;

        var words = await queries.WordsAsync(Who.Salon, seq, stop);
        View = EntryView.Of(entry, words, await queries.ErasuresAsync(Who.Salon, stop), Who.Names);
        return words.Any(EntryView.IsLeft);
    }
}
