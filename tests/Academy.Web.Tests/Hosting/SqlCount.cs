using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Academy.Web.Tests.Hosting;

/// <summary>Counts the SQL commands that were sent, so that a page can be pinned to a number.</summary>
public sealed class SqlCount : DbCommandInterceptor
{
    private int _commands;

    public int Commands => _commands;

    /// <summary>How many commands the work took.</summary>
    public async Task<int> OfAsync(Func<Task> work)
    {
        var before = Commands;
        await work();
        return Commands - before;
    }

    public override DbDataReader ReaderExecuted(DbCommand command, CommandExecutedEventData eventData, DbDataReader result)
    {
        Interlocked.Increment(ref _commands);
        return result;
    }

    public override ValueTask<DbDataReader> ReaderExecutedAsync(
        DbCommand command,
        CommandExecutedEventData eventData,
        DbDataReader result,
        CancellationToken cancellationToken = default
    ) => ValueTask.FromResult(ReaderExecuted(command, eventData, result));

    public override ValueTask<int> NonQueryExecutedAsync(
        DbCommand command,
        CommandExecutedEventData eventData,
        int result,
        CancellationToken cancellationToken = default
    )
    {
        Interlocked.Increment(ref _commands);
        return ValueTask.FromResult(result);
    }
}
