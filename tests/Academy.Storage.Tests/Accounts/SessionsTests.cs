using Academy.Storage.Accounts;

namespace Academy.Storage.Tests.Accounts;

public sealed class SessionsTests
{
    private static readonly DateTimeOffset Opened = new(2026, 3, 2, 9, 0, 0, TimeSpan.FromHours(1));

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_opened_is_found_as_it_was()
    {
        using var salon = await SignInsAsync();

        var found = await salon.InAsync(sessions => sessions.FindAsync("tablet-1", Opened, Stop));

        Assert.Equivalent(NewSession("tablet-1", salon.Pim, "tablet"), found, strict: true);
    }

    [Fact]
    public async Task A_session_ends_by_itself_at_the_moment_it_expires()
    {
        using var salon = await SignInsAsync();

        Assert.NotNull(await salon.InAsync(sessions => sessions.FindAsync("tablet-1", Opened.AddMinutes(15).AddTicks(-1), Stop)));
        Assert.Null(await salon.InAsync(sessions => sessions.FindAsync("tablet-1", Opened.AddMinutes(15), Stop)));
    }

    [Fact]
    public async Task A_renewal_moves_the_end_and_never_brings_back_what_was_ended()
    {
        using var salon = await SignInsAsync();
        var later = Opened.AddMinutes(10);

        Assert.True(await salon.InAsync(sessions => sessions.RenewAsync("tablet-1", [7], later, later.AddMinutes(15))));
        Assert.NotNull(await salon.InAsync(sessions => sessions.FindAsync("tablet-1", Opened.AddMinutes(20), Stop)));

        await salon.InAsync(sessions => sessions.EndAsync("tablet-1"));
        Assert.False(await salon.InAsync(sessions => sessions.RenewAsync("tablet-1", [8], later, later.AddMinutes(15))));
        Assert.Null(await salon.InAsync(sessions => sessions.FindAsync("tablet-1", Opened, Stop)));
    }

    [Fact]
    public async Task Everything_of_one_person_or_on_one_device_can_be_ended_at_once()
    {
        using var salon = await SignInsAsync();

        await salon.InAsync(sessions => sessions.EndAllOnAsync("tablet"));
        Assert.Equal(
            ["phone-1"],
            (await salon.InAsync(sessions => sessions.OfAsync(salon.Pim, Opened, Stop))).Select(one => one.Key)
        );

        await salon.InAsync(sessions => sessions.EndAllOfAsync(salon.Pim));
        Assert.Empty(await salon.InAsync(sessions => sessions.OfAsync(salon.Pim, Opened, Stop)));
        Assert.NotNull(await salon.InAsync(sessions => sessions.FindAsync("phone-2", Opened, Stop)));
    }

    [Fact]
    public async Task Sweeping_takes_only_what_has_expired()
    {
        using var salon = await SignInsAsync();
        await salon.InAsync(sessions => sessions.RenewAsync("phone-2", [1], Opened, Opened.AddHours(24)));

        Assert.Equal(3, await salon.InAsync(sessions => sessions.SweepAsync(Opened.AddMinutes(15))));
        Assert.NotNull(await salon.InAsync(sessions => sessions.FindAsync("phone-2", Opened.AddHours(1), Stop)));
    }

    [Fact]
    public void A_closed_account_opens_nothing_from_its_last_moment_on()
    {
        var account = new Account { LockedFrom = Opened };

        Assert.True(account.MayOpen(Opened.AddTicks(-1)));
        Assert.False(account.MayOpen(Opened));
        Assert.True(new Account().MayOpen(Opened));
    }

    private static Session NewSession(string key, Guid account, string device) =>
        new()
        {
            Key = key,
            AccountId = account,
            Device = device,
            OpenedAt = Opened,
            LastSeenAt = Opened,
            ExpiresAt = Opened.AddMinutes(15),
            Value = [1, 2, 3],
        };

    private static async Task<SignIns> SignInsAsync()
    {
        var signIns = new SignIns(await TestDatabase.NewAsync());
        await using var db = signIns.Database.NewDb();
        db.Users.AddRange(
            new Account { Id = signIns.Pim, UserName = "pim" },
            new Account { Id = signIns.Rosa, UserName = "rosa" }
        );
        await db.SaveChangesAsync(Stop);
        var sessions = new Sessions(db);
        await sessions.OpenAsync(NewSession("tablet-1", signIns.Pim, "tablet"));
        await sessions.OpenAsync(NewSession("tablet-2", signIns.Rosa, "tablet"));
        await sessions.OpenAsync(NewSession("phone-1", signIns.Pim, "phone"));
        await sessions.OpenAsync(NewSession("phone-2", signIns.Rosa, "phone"));
        return signIns;
    }

    private sealed record SignIns(TestDatabase Database) : IDisposable
    {
        public Guid Pim { get; } = new("0198c0de-0000-7000-8002-000000000001");

        public Guid Rosa { get; } = new("0198c0de-0000-7000-8002-000000000002");

        public async Task<T> InAsync<T>(Func<Sessions, Task<T>> ask)
        {
            await using var db = Database.NewDb();
            return await ask(new Sessions(db));
        }

        public async Task InAsync(Func<Sessions, Task> tell)
        {
            await using var db = Database.NewDb();
            await tell(new Sessions(db));
        }

        public void Dispose() => Database.Dispose();
    }
}
