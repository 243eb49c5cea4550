using System.Net;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Storage.Accounts;
using Academy.Storage.Ledgers;
using Academy.Storage.Sqlite;
using Academy.Web.Access;
using Academy.Web.Shell;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;

namespace Academy.Web.Tests.Hosting;

/// <summary>
/// The whole portal over a database of its own, with a clock that the test moves. <see cref="OpenSalonAsync"/> puts a cast into
/// it, <see cref="AsAsync"/> signs one of them in. Dispose it: the database goes with it.
/// </summary>
public sealed class PortalHost : WebApplicationFactory<Program>
{
    /// <summary>A Wednesday morning in early summer: 10:00 in the zone of the test salon, in the season in which days may be hot.</summary>
    public static readonly DateTimeOffset Start = new(2026, 6, 10, 8, 0, 0, TimeSpan.Zero);

    private readonly Dictionary<string, string> _settings = new(StringComparer.Ordinal);
    private readonly List<Action<IServiceCollection>> _replacements = [];
    private readonly DirectoryInfo _folder;
    private DatabaseFile? _file;
    private bool _isHandedOn;

    public PortalHost()
        : this(Directory.CreateTempSubdirectory("academy-"), new FakeTimeProvider(Start)) { }

    private PortalHost(DirectoryInfo folder, FakeTimeProvider clock) => (_folder, Clock) = (folder, clock);

    public FakeTimeProvider Clock { get; }

    /// <summary>How many SQL commands were sent.</summary>
    public SqlCount Sql { get; } = new();

    /// <summary>What the portal wrote into the console of whoever started it.</summary>
    public StringWriter Console { get; } = new();

    /// <summary>What the portal wrote into its log, warnings and worse.</summary>
    public Notes Log { get; } = new();

    public DateTimeOffset Now => Clock.GetUtcNow();

    /// <summary>The day in the salon's zone.</summary>
    public DateOnly Today => SalonDay.Of(Now, Cast.Zone);

    public string Folder => _folder.FullName;

    /// <summary>Forms are sealed with the keys of the database, as they are outside tests; in most tests with keys of the moment.</summary>
    public bool KeepsKeys { get; init; }

    /// <summary>What runs by itself, each hour and each night, runs as it does outside tests; in most tests it would add to what they count.</summary>
    public bool Sweeps { get; init; }

    public PortalHost With(string setting, string value)
    {
        _settings[setting] = value;
        return this;
    }

    /// <summary>Puts a part of the test's own in place of the portal's.</summary>
    public PortalHost With(Action<IServiceCollection> replace)
    {
        _replacements.Add(replace);
        return this;
    }

    /// <summary>
    /// Stops this portal and gives another over the same database, at the same moment, as after an update. Its settings are named
    /// anew; whoever was signed in signs in again.
    /// </summary>
    public async Task<PortalHost> AgainAsync()
    {
        _isHandedOn = true;
        await DisposeAsync();
        return new PortalHost(_folder, Clock) { KeepsKeys = KeepsKeys };
    }

    /// <summary>A portal with one salon and its cast.</summary>
    public static async Task<(PortalHost Portal, Cast Cast)> OpenAsync()
    {
        var portal = new PortalHost();
        return (portal, await portal.OpenSalonAsync());
    }

    /// <summary>Opens a salon with an owner, two seniors and two juniors. A second one in the same database is for isolation.</summary>
    public async Task<Cast> OpenSalonAsync(string name = "The Wet Nose")
    {
        var cast = Cast.Of(name, New, Today.AddYears(-1));
        await KeepAsync(cast.Salon, Keeping.Open(new Words(name), Cast.Zone, cast.Owner, Today.AddYears(-1)), by: null);
        foreach (var person in cast.Others)
            await KeepAsync(cast.Salon, Staffing.Describe(person, before: null, cast.Owner, owners: 1), cast.Owner);
        // Asked for once in the life of a portal: not what a test of one page wants to count.
        await Services.GetRequiredService<FirstRun>().SalonAsync(TestContext.Current.CancellationToken);
        return cast;
    }

    /// <summary>Keeps what the rules granted; a refusal fails the test with its reasons.</summary>
    public Task<Kept> KeepAsync(SalonId salon, Decision decision, Person? by) =>
        DoAsync<Ledger, Kept>(ledger =>
            ledger.KeepAsync(salon, Assert.IsType<Granted>(decision), new Hand(by?.Id, "a test", Now), new OperationId(New()))
        );

    /// <summary>The owner declares experience, so that a person is alone in these skills.</summary>
    public async Task DeclareAsync(Cast cast, Person person, params IEnumerable<string> skills)
    {
        var team = await DoAsync<RecordBook, Competence.Standings.Team>(book => book.TeamAsync(cast.Salon, Now, default));
        foreach (var skill in skills)
            await KeepAsync(
                cast.Salon,
                Clearing.Declare(
                    new DecisionId(New()),
                    team[person.Id, new SkillCode(skill)]!,
                    team.AloneIn(new SkillCode(skill)).Any(),
                    person,
                    cast.Owner,
                    Today,
                    new Words("Years of it before this salon."),
                    Now,
                    Cast.Zone
                ),
                cast.Owner
            );
    }

    /// <summary>Somebody who is not signed in.</summary>
    public Visitor Anyone(bool https = false, string? agent = null) => Browser(new CookieJar(), https, agent);

    /// <summary>Somebody of the cast, signed in on her own device.</summary>
    public async Task<Visitor> AsAsync(Cast cast, Person person) =>
        Browser(new CookieJar(("academy-session", await SignInAsync(cast, person))), https: false, agent: null);

    /// <summary>Signs somebody in and hands out the cookie's value, for a browser of the test's own.</summary>
    public async Task<string> SignInAsync(Cast cast, Person person)
    {
        var key = WebEncoders.Base64UrlEncode(Guid.CreateVersion7().ToByteArray());
        var account = await AccountOfAsync(cast.Salon, person);
        await DoAsync<Sessions, int>(async sessions =>
        {
            await sessions.OpenAsync(SessionOf(cast.Salon, person, account, key));
            return 0;
        });
        return key;
    }

    /// <summary>Asks one part of the portal, as a request would have it.</summary>
    public async Task<TAnswer> DoAsync<TPart, TAnswer>(Func<TPart, Task<TAnswer>> ask)
        where TPart : notnull
    {
        await using var scope = Services.CreateAsyncScope();
        return await ask(scope.ServiceProvider.GetRequiredService<TPart>());
    }

    private int _seeds;

    /// <summary>An id, later in order than those before.</summary>
    public Guid New() => Services.GetRequiredService<Ids>().New();

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        if (!File.Exists(Path.Combine(Folder, "academy.db")))
            EmptyDatabase.CopyTo(Folder);
        builder.UseEnvironment("Production");
        builder.UseSetting("Data:Folder", Folder);
        // No modules, unless a test names some: reading the real ones would take longer than most tests.
        builder.UseSetting("Site:FillDemo", "false");
        builder.UseSetting("Modules:Folder", _folder.CreateSubdirectory("modules").FullName);
        foreach (var (setting, value) in _settings)
            builder.UseSetting(setting, value);

        builder.ConfigureLogging(log => log.ClearProviders().AddProvider(Log));
        builder.ConfigureTestServices(parts =>
        {
            if (!Sweeps)
                foreach (var alone in parts.Where(part => part.ImplementationType?.BaseType == typeof(Hourly)).ToList())
                    parts.Remove(alone);
            if (!KeepsKeys)
                parts.AddSingleton<IDataProtectionProvider, EphemeralDataProtectionProvider>();
            parts.AddSingleton<TimeProvider>(Clock);
            // Quizzes are drawn by 1, 2, 3 and so on: a test that fails fails again.
            parts.AddSingleton(new Ids(Clock, () => Interlocked.Increment(ref _seeds)));
            parts.AddSingleton<TextWriter>(Console);
            parts.ConfigureDbContext<AcademyDb>(options => options.AddInterceptors(Sql));
            // Passwords are hashed for real, only not as often: that the portal does is another test's business.
            parts.Configure<PasswordHasherOptions>(hash => hash.IterationCount = 1000);
            _replacements.ForEach(replace => replace(parts));
        });
    }

    protected override IHost CreateHost(IHostBuilder builder)
    {
        var host = base.CreateHost(builder);
        _file = host.Services.GetRequiredService<DatabaseFile>();
        return host;
    }

    // The program lets go of its file when its last line is through, which may be after this: the next one over it must not wait.
    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        _file?.Dispose();
        GC.SuppressFinalize(this);
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && !_isHandedOn && Directory.Exists(Folder))
            _folder.Delete(recursive: true);
    }

    private Visitor Browser(CookieJar jar, bool https, string? agent)
    {
        var client = CreateDefaultClient(new Uri(https ? "https://salon.example/" : "http://salon.example/"), jar);
        if (agent is not null)
            client.DefaultRequestHeaders.UserAgent.ParseAdd(agent);
        return new Visitor(client, jar.Cookies);
    }

    private async Task<Guid> AccountOfAsync(SalonId salon, Person person)
    {
        await using var scope = Services.CreateAsyncScope();
        var accounts = scope.ServiceProvider.GetRequiredService<UserManager<Account>>();
        var there = await accounts.Users.SingleOrDefaultAsync(one =>
            one.SalonId == salon.Value && one.PersonId == person.Id.Value
        );
        if (there is not null)
            return there.Id;

        var account = new Account
        {
            Id = New(),
            UserName = $"{person.Name}-{New()}",
            SalonId = salon.Value,
            PersonId = person.Id.Value,
            OpenedAt = Now,
        };
        var made = await accounts.CreateAsync(account);
        Assert.True(made.Succeeded, made.ToString());
        return account.Id;
    }

    private Session SessionOf(SalonId salon, Person person, Guid account, string key) =>
        new()
        {
            Key = SessionScheme.NameOf(key),
            AccountId = account,
            Device = "Firefox on Android",
            OpenedAt = Now,
            LastSeenAt = Now,
            ExpiresAt = SessionLengths.OwnDevice.EndOf(Now, Now),
            Value = new Badge(account, salon, person.Id, "Firefox on Android", IsOwnDevice: true).Written(),
        };
}
