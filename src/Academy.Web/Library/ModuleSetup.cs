using Academy.Modules;
using Academy.Storage;
using Academy.Web.Wording;

namespace Academy.Web.Library;

/// <summary>Reads the modules once, when the portal starts, and serves their pictures.</summary>
public static class ModuleSetup
{
    public static WebApplicationBuilder AddAcademyModules(this WebApplicationBuilder builder)
    {
        var folder = ModuleFolder.Of(builder.Configuration, builder.Environment.ContentRootPath);
        builder.Services.AddSingleton(_ => ModuleLibrary.Load(folder));
        builder.Services.AddSingleton<Shelves>();
        builder.Services.AddScoped<ShelfHere>();
        builder.Services.AddScoped(services => services.GetRequiredService<ShelfHere>().Shelf);
        builder.Services.AddScoped<Titles>();
        builder.Services.AddSingleton<EditionsTold>();
        builder.Services.AddSingleton<OldEditions>();
        builder.Services.AddSingleton<ParcelRack>();
        builder.Services.AddSingleton<ModuleIndex>();
        builder.Services.AddScoped<EditionBook>();
        builder.Services.AddScoped<DraftBook>();
        builder.Services.AddScoped<QuizBook>();
        builder.Services.AddScoped<JudgingBook>();
        builder.Services.AddScoped<ReadingPlaces>();
        builder.Services.AddScoped<Editions>();
        return builder;
    }

    /// <summary>Before sign-in: a salon that was opened meanwhile hears of the modules before anything is asked of its book.</summary>
    public static WebApplication UseAcademyModules(this WebApplication app)
    {
        app.UseMiddleware<TellsEditions>();
        return app;
    }

    /// <summary>After it is known who comes: the modules are those of her salon.</summary>
    public static WebApplication UseShelves(this WebApplication app)
    {
        app.UseMiddleware<PutsShelfUp>();
        return app;
    }

    public static WebApplication MapAcademyModules(this WebApplication app)
    {
        app.MapPictures();
        return app;
    }

    /// <summary>Says what was found in the files and notes the editions, after the tables are there and before anything is answered.</summary>
    public static async Task OpenLibraryAsync(this WebApplication app)
    {
        var library = app.Services.GetRequiredService<ModuleLibrary>();
        var log = app.Services.GetRequiredService<ILogger<ModuleLibrary>>();
        foreach (var finding in library.Findings)
            log.Log(
                finding.Severity == Severity.Hint ? LogLevel.Information : LogLevel.Warning,
                "Module file {Finding}",
                finding
            );
        await app.Services.GetRequiredService<EditionsTold>().TellAsync();
    }
}
