using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Shell;

namespace Academy.Web.Library;

/// <summary>
/// Keeps the text of every edition that the portal serves, and writes into each salon's ledger which editions it sees: what
/// knowledge is asked against, and what a past day is asked by.
/// </summary>
public sealed class EditionsTold(ModuleLibrary library, IServiceScopeFactory scopes, Ids ids, TimeProvider clock) : IDisposable
{
    private readonly SemaphoreSlim _turn = new(1, 1);

    /// <summary>Whether there is nothing more to tell; until a salon is opened there is.</summary>
    public bool IsDone { get; private set; } = library.Modules.IsEmpty;

    public async Task TellAsync()
    {
        if (IsDone)
            return;
        await _turn.WaitAsync();
        try
        {
            if (!IsDone)
                IsDone = await TellSalonsAsync();
        }
        finally
        {
            _turn.Release();
        }
    }

    public void Dispose() => _turn.Dispose();

    private async Task<bool> TellSalonsAsync()
    {
        await using var scope = scopes.CreateAsyncScope();
        var editions = scope.ServiceProvider.GetRequiredService<EditionBook>();
        var salons = await editions.SalonsAsync(CancellationToken.None);
        if (salons.Count == 0)
            return false;
        foreach (var lesson in library.Lessons)
            await editions.KeepAsync(lesson.Module.Name, lesson.Module.Hash, () => KeptEdition.Of(lesson));
        var ledger = scope.ServiceProvider.GetRequiredService<Ledger>();
        var records = scope.ServiceProvider.GetRequiredService<RecordBook>();
        foreach (var salon in salons)
            await TellAsync(salon, await records.SalonAsync(salon, CancellationToken.None), editions, ledger);
        return true;
    }

    // A module of which the salon has an edition of its own stays as the salon wrote it.
    private async Task TellAsync(SalonId salon, SalonBook book, EditionBook editions, Ledger ledger)
    {
        var seen = await editions.SeenAsync(salon, CancellationToken.None);
        var hand = new Hand(Person: null, "the portal", clock.GetUtcNow());
        var today = SalonDay.Of(clock.GetUtcNow(), book.Zone);
        foreach (var module in library.Modules.Where(module => seen.GetValueOrDefault(module.Name) != module.Hash))
            if (
                book.OwnModules.All(own => own.Module != module.Name)
                && Seeing(module, IsSafetyChange(module, book) ? Publishing.CatchUpBy(module, today) : null) is Granted granted
            )
                await ledger.KeepAsync(salon, granted, hand, new(ids.New()));
    }

    private static bool IsSafetyChange(Module module, SalonBook book) =>
        book.Library.Any(asked => asked.Module == module.Name && asked.SafetyCriticalSince < module.SafetyCriticalSince);

    private static Decision Seeing(Module module, DateOnly? catchUpBy) =>
        Keeping.SeeEdition(
            module.Name,
            module.Edition,
            module.SafetyCriticalSince,
            module.RefresherDays,
            module.RenewedEachSpring,
            module.Hash,
            catchUpBy
        );
}

/// <summary>Tells a salon that was opened while the portal ran, before its first page is answered.</summary>
internal sealed class TellsEditions(RequestDelegate next, EditionsTold editions)
{
    public async Task InvokeAsync(HttpContext http)
    {
        await editions.TellAsync();
        await next(http);
    }
}
