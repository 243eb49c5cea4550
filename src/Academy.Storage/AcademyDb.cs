using Academy.Storage.Accounts;
using Academy.Storage.Rows;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;

namespace Academy.Storage;

/// <summary>
/// The tables. Everything about a salon's work is keyed by the salon first; the ledger is the log, and whatever else is about
/// work is a projection of it. Sign-ins, sessions and keys belong to the web and are not in the ledger.
/// </summary>
public sealed class AcademyDb : IdentityUserContext<Account, Guid>, IDataProtectionKeyContext
{
    private readonly DatabaseHabits _habits;

    public AcademyDb(DbContextOptions<AcademyDb> options)
        : base(options)
    {
        _habits =
            options.FindExtension<CoreOptionsExtension>()?.Interceptors?.OfType<DatabaseHabits>().SingleOrDefault()
            ?? throw new InvalidOperationException("Set the database up by its own room, for example with UseAcademySqlite.");
        // A save of one row begins no transaction by itself, and then nobody would wait for a turn.
        Database.AutoTransactionBehavior = AutoTransactionBehavior.Always;
    }

    public DbSet<SalonRow> Salons => Set<SalonRow>();

    public DbSet<LedgerRow> Ledger => Set<LedgerRow>();

    public DbSet<WordsRow> Words => Set<WordsRow>();

    public DbSet<OperationRow> Operations => Set<OperationRow>();

    public DbSet<RecordVersionRow> RecordVersions => Set<RecordVersionRow>();

    public DbSet<DogRow> Dogs => Set<DogRow>();

    public DbSet<GroomRow> Grooms => Set<GroomRow>();

    public DbSet<GroomDoerRow> GroomDoers => Set<GroomDoerRow>();

    public DbSet<IncidentRow> Incidents => Set<IncidentRow>();

    public DbSet<DisputeRow> Disputes => Set<DisputeRow>();

    public DbSet<FlagRow> Flags => Set<FlagRow>();

    public DbSet<PresenceRow> Presences => Set<PresenceRow>();

    public DbSet<ReadingRow> Readings => Set<ReadingRow>();

    public DbSet<StepRow> Steps => Set<StepRow>();

    public DbSet<TallyRow> Tallies => Set<TallyRow>();

    public DbSet<AttemptRow> Attempts => Set<AttemptRow>();

    public DbSet<SittingRow> Sittings => Set<SittingRow>();

    public DbSet<EditionTextRow> EditionTexts => Set<EditionTextRow>();

    public DbSet<DraftRow> Drafts => Set<DraftRow>();

    public DbSet<DraftPictureRow> DraftPictures => Set<DraftPictureRow>();

    public DbSet<JudgingRow> Judgings => Set<JudgingRow>();

    public DbSet<ReadingPlaceRow> ReadingPlaces => Set<ReadingPlaceRow>();

    public DbSet<InvitationRow> Invitations => Set<InvitationRow>();

    public DbSet<CalendarAddressRow> CalendarAddresses => Set<CalendarAddressRow>();

    public DbSet<SignInFailureRow> SignInFailures => Set<SignInFailureRow>();

    public DbSet<Session> Sessions => Set<Session>();

    public DbSet<Device> Devices => Set<Device>();

    public DbSet<DataProtectionKey> DataProtectionKeys => Set<DataProtectionKey>();

    /// <summary>
    /// Does the work in the writer's turn and in one transaction. The work takes no cancellation: a browser that goes away
    /// must not leave open whether its write was kept. A write within a write is part of it.
    /// </summary>
    public async Task<T> WriteAsync<T>(Func<Task<T>> work)
    {
        if (Database.CurrentTransaction is not null)
            return await work();
        using var turn = await _habits.TakeTurnAsync();
        await using var transaction = await Database.BeginTransactionAsync(CancellationToken.None);
        var answer = await work();
        await transaction.CommitAsync(CancellationToken.None);
        return answer;
    }

    /// <summary>
    /// Does the work as <see cref="WriteAsync"/> does, on nothing but what it reads itself: what the caller happens to have in hand
    /// is neither saved nor taken for what the database says. Changes are looked for once before each save: to look at every row
    /// at every step costs more than all the rest.
    /// </summary>
    internal async Task<T> WriteAloneAsync<T>(Func<Task<T>> work)
    {
        var detects = ChangeTracker.AutoDetectChangesEnabled;
        ChangeTracker.Clear();
        ChangeTracker.AutoDetectChangesEnabled = false;
        try
        {
            return await WriteAsync(work);
        }
        finally
        {
            ChangeTracker.Clear();
            ChangeTracker.AutoDetectChangesEnabled = detects;
        }
    }

    /// <summary>
    /// Saves many rows at once and lets go of every one: what is wanted again is read again. Only within
    /// <see cref="WriteAloneAsync"/>.
    /// </summary>
    internal async Task SaveManyAsync()
    {
        if (!ChangeTracker.Entries().Any(entry => entry.State == EntityState.Deleted))
            await _habits.InsertAsync(this);
        ChangeTracker.DetectChanges();
        await SaveChangesAsync();
        ChangeTracker.Clear();
    }

    /// <summary>Lets go of what was erased, also in the files that the database keeps beside its own.</summary>
    public async Task LetGoAsync()
    {
        using var turn = await _habits.TakeTurnAsync();
        await _habits.LetGoAsync(this);
    }

    public override int SaveChanges(bool acceptAllChangesOnSuccess) =>
        throw new NotSupportedException("Waiting for a turn blocks a thread: use SaveChangesAsync.");

    public override async Task<int> SaveChangesAsync(
        bool acceptAllChangesOnSuccess,
        CancellationToken cancellationToken = default
    )
    {
        if (Database.CurrentTransaction is not null)
            return await base.SaveChangesAsync(acceptAllChangesOnSuccess, CancellationToken.None);
        using var turn = await _habits.TakeTurnAsync();
        return await base.SaveChangesAsync(acceptAllChangesOnSuccess, CancellationToken.None);
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        // Ticks sort and compare alike everywhere and lose nothing; a database's own timestamp may keep microseconds only.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();
        _habits.LayDown(configurationBuilder);
    }

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        AccountTables.Shape(builder);
        LedgerTables.Shape(builder);
        ProjectionTables.Shape(builder);
        SnakeCase.Apply(builder);
    }
}
