using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Shared;

/// <summary>What a form brought along: made when it was shown, so that a second sending is no second write and a stale one is noticed.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Record">What it was shown of.</param>
/// <param name="Version">The version it was shown at.</param>
public sealed record Sent(Guid Operation, Guid Record, long Version);

/// <summary>A page that keeps what the rules granted, and answers what they refuse and what moved on in between.</summary>
public abstract class KeepingPage(Who who, Ledger ledger) : AcademyPage
{
    private const string MovedOnWords =
        "Somebody wrote in between. Look at what is there now, and send it again if you still want it";

    protected Who Who => who;

    /// <summary>The version at which the page is shown again after somebody wrote in between.</summary>
    protected virtual void ShowAt(long version) { }

    /// <summary>Keeps and goes on to <paramref name="path"/>; or the page again with all reasons against, or with what is there now.</summary>
    protected Task<IActionResult> KeepAsync(Decision decision, Sent sent, string path, string done, CancellationToken stop) =>
        KeepAsync(decision, sent.Operation, path, done, stop, new Expected(sent.Record, sent.Version));

    /// <summary>The same of what only adds and can meet nothing that moved on.</summary>
    protected async Task<IActionResult> KeepAsync(
        Decision decision,
        Guid operation,
        string path,
        string done,
        CancellationToken stop,
        Expected? expected = null
    )
    {
        var id = new OperationId(operation);
        if (decision is Refused refused)
            return await HasKeptAsync(operation, stop) ? Done(path, done) : Again(Say.Reasons(refused.Reasons, who.Names));

        return await ledger.KeepAsync(who.Salon, (Granted)decision, who.Hand, id, expected) is Kept.RecordMovedOn moved
            ? AgainAt(moved.Version)
            : Done(path, done);
    }

    /// <summary>Whether a form was kept already: it is sent again, and the rules may say no to it now.</summary>
    protected Task<bool> HasKeptAsync(Guid operation, CancellationToken stop) =>
        ledger.HasKeptAsync(who.Salon, new OperationId(operation), stop);

    private PageResult AgainAt(long version)
    {
        ShowAt(version);
        ModelState.AddModelError("", MovedOnWords);
        return MovedOn();
    }
}
