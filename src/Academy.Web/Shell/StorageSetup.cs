using Academy.Storage;
using Academy.Storage.Accounts;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Academy.Storage.Sqlite;

namespace Academy.Web.Shell;

/// <summary>Why the portal did not start: a sentence for whoever started it, and what the shell is told.</summary>
public sealed record NoStart(string Sentence, int ExitCode)
{
    /// <summary>The folder cannot be written; the number is the one that sysexits.h gives to "cannot create output file".</summary>
    public const int CannotWrite = 73;

    /// <summary>Another process holds the database; sysexits.h calls it a temporary failure.</summary>
    public const int Taken = 75;
}

/// <summary>Opens the one file that everything is kept in, in the folder that <c>Data:Folder</c> names.</summary>
public static class StorageSetup
{
    /// <summary>Null when the file is open; otherwise why not.</summary>
    public static NoStart? AddAcademyStorage(this WebApplicationBuilder builder)
    {
        var site = Site.Of(builder.Configuration, builder.Environment);
        var path = PathOf(site);
        try
        {
            builder.Services.AddStorageOver(DatabaseFile.Open(path));
            return null;
        }
        catch (DatabaseTakenException taken)
        {
            return new NoStart(taken.Message, NoStart.Taken);
        }
        catch (Exception refused) when (refused is UnauthorizedAccessException or IOException)
        {
            return new NoStart(
                $"The data folder {site.DataFolder} cannot be written: {refused.Message} "
                    + "Name another one with the setting Data:Folder (or ACADEMY_Data__Folder in the environment).",
                NoStart.CannotWrite
            );
        }
    }

    /// <summary>The file that everything is kept in; the demo has one of its own.</summary>
    public static string PathOf(Site site) => Path.Combine(site.DataFolder, site.Demo ? "demo.db" : "academy.db");

    /// <summary>Brings the tables to this version before anything is answered.</summary>
    public static async Task MigrateAcademyAsync(this WebApplication app)
    {
        var stop = app.Lifetime.ApplicationStopping;
        await app.Services.GetRequiredService<DatabaseFile>().MigrateAsync(stop);
        await using var scope = app.Services.CreateAsyncScope();
        var refolding = new Refolding(scope.ServiceProvider.GetRequiredService<AcademyDb>());
        await refolding.RefoldOldFormsAsync(app.Services.GetRequiredService<TimeProvider>().GetUtcNow(), stop);
    }

    private static void AddStorageOver(this IServiceCollection services, DatabaseFile file)
    {
        // Made by a function so that the container closes it, and with it the lock, when the portal stops.
        services.AddSingleton(_ => file);
        services.AddDbContext<AcademyDb>((parts, options) => options.UseAcademySqlite(parts.GetRequiredService<DatabaseFile>()));
        services.AddSingleton<BookShelf>();
        services.AddSingleton<IModuleSearch, SqliteModuleSearch>();
        services.AddScoped<RecordBook>();
        services.AddScoped<Ledger>();
        services.AddScoped<Sessions>();
        services.AddScoped<Invitations>();
        services.AddScoped<CalendarAddresses>();
        services.AddScoped<SignInFailures>();
        services.AddHealthChecks().AddDbContextCheck<AcademyDb>("database");
    }
}
