using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Rows;

internal static class ProjectionTables
{
    public static void Shape(ModelBuilder builder)
    {
        Lists(builder);
        Evidence(builder);
        SigningIn(builder);
    }

    private static void Lists(ModelBuilder builder)
    {
        builder.Entity<RecordVersionRow>().ToTable("record_versions").HasKey(row => new { row.SalonId, row.Record });
        var dogs = builder.Entity<DogRow>().ToTable("dogs");
        dogs.HasKey(row => new { row.SalonId, row.Id });
        dogs.HasIndex(row => new { row.SalonId, row.Name });
        dogs.HasIndex(row => new
        {
            row.SalonId,
            row.Search,
            row.Id,
        });
        dogs.HasIndex(row => new
        {
            row.SalonId,
            row.LastGroomAt,
            row.Name,
        });
        var grooms = builder.Entity<GroomRow>().ToTable("grooms");
        grooms.HasKey(row => new { row.SalonId, row.Id });
        grooms.HasIndex(row => new
        {
            row.SalonId,
            row.Dog,
            row.StartedAt,
        });
        grooms.HasIndex(row => new { row.SalonId, row.StartedAt });
        grooms.HasIndex(row => new
        {
            row.SalonId,
            row.State,
            row.By,
        });
        grooms.HasIndex(row => new { row.SalonId, row.EndedAt }).HasFilter("watcher IS NULL");
        var doers = builder.Entity<GroomDoerRow>().ToTable("groom_doers");
        doers.HasKey(row => new
        {
            row.SalonId,
            row.Groom,
            row.Person,
        });
        doers.HasIndex(row => new
        {
            row.SalonId,
            row.Person,
            row.EndedAt,
        });
        doers.HasIndex(row => new
        {
            row.SalonId,
            row.Person,
            row.SignedAt,
        });
        doers.HasIndex(row => new
        {
            row.SalonId,
            row.SignOff,
            row.EndedAt,
        });
        doers.HasIndex(row => new
        {
            row.SalonId,
            row.SignOff,
            row.Watcher,
            row.EndedAt,
        });
        doers
            .HasIndex(row => new
            {
                row.SalonId,
                row.SignedAt,
                row.SignOff,
            })
            .HasFilter("is_late");
        var incidents = builder.Entity<IncidentRow>().ToTable("incidents");
        incidents.HasKey(row => new { row.SalonId, row.Id });
        incidents.HasIndex(row => new
        {
            row.SalonId,
            row.ReviewedAt,
            row.ReportedAt,
            row.Id,
        });
        var disputes = builder.Entity<DisputeRow>().ToTable("disputes");
        disputes.HasKey(row => new { row.SalonId, row.SignOff });
        disputes.HasIndex(row => new
        {
            row.SalonId,
            row.AnsweredAt,
            row.At,
            row.SignOff,
        });
        disputes.HasIndex(row => new
        {
            row.SalonId,
            row.By,
            row.At,
        });
        var flags = builder.Entity<FlagRow>().ToTable("flags");
        flags.HasKey(row => new
        {
            row.SalonId,
            row.Groom,
            row.Person,
        });
        flags.HasIndex(row => new
        {
            row.SalonId,
            row.SpokenAt,
            row.At,
        });
        var presences = builder.Entity<PresenceRow>().ToTable("presences");
        presences.HasKey(row => new { row.SalonId, row.Id });
        presences.HasIndex(row => new { row.SalonId, row.Day });
        var readings = builder.Entity<ReadingRow>().ToTable("readings");
        readings.HasKey(row => new { row.SalonId, row.Id });
        readings.HasIndex(row => new { row.SalonId, row.At });
    }

    private static void Evidence(ModelBuilder builder)
    {
        var steps = builder.Entity<StepRow>().ToTable("steps");
        steps.HasKey(row => new
        {
            row.SalonId,
            row.Person,
            row.Skill,
            row.At,
            row.Source,
            row.Kind,
            row.Row,
        });
        steps.HasIndex(row => new { row.SalonId, row.Source });
        builder
            .Entity<TallyRow>()
            .ToTable("tallies")
            .HasKey(row => new
            {
                row.SalonId,
                row.Person,
                row.Skill,
            });
        var attempts = builder.Entity<AttemptRow>().ToTable("attempts");
        attempts.HasKey(row => new { row.SalonId, row.Id });
        attempts.HasIndex(row => new
        {
            row.SalonId,
            row.Person,
            row.HandedInAt,
        });
        attempts.HasIndex(row => new
        {
            row.SalonId,
            row.Module,
            row.Person,
            row.IsRefresher,
            row.HandedInAt,
        });
        var sittings = builder.Entity<SittingRow>().ToTable("sittings");
        sittings.HasKey(row => new { row.SalonId, row.Id });
        sittings.HasIndex(row => new
        {
            row.SalonId,
            row.Person,
            row.Module,
        });
        builder.Entity<EditionTextRow>().ToTable("edition_texts").HasKey(row => new { row.Module, row.ContentHash });
        builder
            .Entity<ReadingPlaceRow>()
            .ToTable("reading_places")
            .HasKey(row => new
            {
                row.SalonId,
                row.Person,
                row.Module,
            });
        builder
            .Entity<JudgingRow>()
            .ToTable("judgings")
            .HasKey(row => new
            {
                row.SalonId,
                row.Person,
                row.Module,
            });
        builder.Entity<DraftRow>().ToTable("drafts").HasKey(row => new { row.SalonId, row.Module });
        builder
            .Entity<DraftPictureRow>()
            .ToTable("draft_pictures")
            .HasKey(row => new
            {
                row.SalonId,
                row.Module,
                row.File,
            });
    }

    private static void SigningIn(ModelBuilder builder)
    {
        var invitations = builder.Entity<InvitationRow>().ToTable("invitations");
        invitations.HasKey(row => new { row.SalonId, row.Id });
        invitations.HasIndex(row => row.TokenHash).IsUnique();
        var calendars = builder.Entity<CalendarAddressRow>().ToTable("calendar_addresses");
        calendars.HasKey(row => new { row.SalonId, row.Person });
        calendars.HasIndex(row => row.TokenHash).IsUnique();
        builder.Entity<SignInFailureRow>().ToTable("sign_in_failures").HasKey(row => row.Key);
    }
}
