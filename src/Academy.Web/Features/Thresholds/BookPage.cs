using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Thresholds;

/// <summary>A page on which the owner changes the salon's book: thresholds, skills, house rules.</summary>
public abstract class BookPage(Who who, RecordBook records, Ledger ledger, Ids ids) : KeepingPage(who, ledger)
{
    /// <summary>The form as it is shown, for when somebody wrote in between.</summary>
    protected abstract (string Name, BookForm Form) Shown { get; }

    /// <summary>Marks a form with its operation and with the version of the book that it is shown at.</summary>
    protected async Task<T> FreshAsync<T>(T form, CancellationToken stop)
        where T : BookForm
    {
        form.Operation = ids.New();
        form.Version = await records.BookVersionAsync(Who.Salon, stop);
        return form;
    }

    protected Task<IActionResult> KeepAsync(Decision decision, string path, string done, CancellationToken stop) =>
        KeepAsync(decision, new Sent(Shown.Form.Operation, Who.Salon.Value, Shown.Form.Version), path, done, stop);

    protected override void ShowAt(long version)
    {
        ModelState.Remove($"{Shown.Name}.{nameof(BookForm.Version)}");
        Shown.Form.Version = version;
    }
}
