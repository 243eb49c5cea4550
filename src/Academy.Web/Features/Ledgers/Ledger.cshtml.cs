using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Ledgers;

/// <summary>The newest entries of the ledger, and a check of the whole of it.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class LedgerModel(Who who, LedgerQueries queries, LedgerCheck check, NightFindings nights) : AcademyPage
{
    /// <summary>The entry before which this page begins.</summary>
    [BindProperty(SupportsGet = true)]
    public long? Before { get; set; }

    public LedgerView View { get; private set; } = null!;

    public CheckedView? Checked { get; private set; }

    /// <summary>What the last night's check found, in a sentence; null before the first night.</summary>
    public string? Night { get; private set; }

    /// <summary>Whether that was a fault.</summary>
    public bool IsBroken { get; private set; }

    public async Task OnGetAsync(CancellationToken stop)
    {
        var found = nights.Of(who.Salon);
        Night = found is null ? null : LedgerWords.Night(found, who.Names);
        IsBroken = found is { Holds: false };
        View = LedgerView.Of(
            await queries.EntriesAsync(who.Salon, Before, stop),
            await queries.ErasuresAsync(who.Salon, stop),
            who.Names
        );
    }

    public async Task OnPostAsync(CancellationToken stop)
    {
        Checked = CheckedView.Of(await check.CheckAsync(who.Salon.Value, stop));
        await OnGetAsync(stop);
    }
}
