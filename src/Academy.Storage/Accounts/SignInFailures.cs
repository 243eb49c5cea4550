using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Accounts;

/// <summary>Counts of failed sign-ins. A count is read and changed in one turn, so that many tries at once are not one try.</summary>
public sealed class SignInFailures(AcademyDb db)
{
    /// <summary>Hands the rows of these keys, new ones where there are none; what is then at 0 is forgotten.</summary>
    public Task<T> ChangeAsync<T>(IReadOnlyList<string> keys, Func<IReadOnlyList<SignInFailureRow>, T> change) =>
        db.WriteAsync(async () =>
        {
            var rows = await RowsAsync(keys);
            var answer = change(rows);
            db.SignInFailures.RemoveRange(rows.Where(row => row.Count == 0));
            await db.SaveChangesAsync();
            return answer;
        });

    public Task<int> CountAsync(string key, CancellationToken stop) =>
        db.SignInFailures.AsNoTracking().Where(row => row.Key == key).Select(row => row.Count).SingleOrDefaultAsync(stop);

    /// <summary>Forgets what is older than this and has not come to this many.</summary>
    public Task<int> SweepAsync(DateTimeOffset before, int fewerThan) =>
        db.WriteAsync(() => db.SignInFailures.Where(row => row.LastAt < before && row.Count < fewerThan).ExecuteDeleteAsync());

    private async Task<SignInFailureRow[]> RowsAsync(IReadOnlyList<string> keys)
    {
        var there = await db.SignInFailures.Where(row => keys.Contains(row.Key)).ToDictionaryAsync(row => row.Key);
        return
        [
            .. keys.Select(key => there.TryGetValue(key, out var row) ? row : db.SignInFailures.Add(new() { Key = key }).Entity),
        ];
    }
}
