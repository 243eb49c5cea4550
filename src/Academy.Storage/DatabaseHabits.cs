using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Academy.Storage;

/// <summary>
/// What one kind of database asks of everybody who uses it: how values are laid down, and how writers take turns. It travels
/// with the options of the context (hence an interceptor), so that no room but the provider's names a database.
/// </summary>
public abstract class DatabaseHabits : IInterceptor
{
    public abstract void LayDown(ModelConfigurationBuilder conventions);

    /// <summary>Waits until this writer may begin its transaction; disposing hands the turn on.</summary>
    public abstract Task<IDisposable> TakeTurnAsync();

    /// <summary>
    /// Writes the rows that were added to this context, within its transaction, and lets go of them. For many at once: a statement
    /// put together anew for each row costs many times what the row itself does.
    /// </summary>
    public abstract Task InsertAsync(DbContext db);

    /// <summary>Sees to it that what was erased is in none of the database's own files any more. Called after the erasure is kept.</summary>
    public abstract Task LetGoAsync(DbContext db);
}
