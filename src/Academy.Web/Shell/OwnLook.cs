using Microsoft.Net.Http.Headers;

namespace Academy.Web.Shell;

/// <summary>
/// A salon's own colour file and logo. Only the two files that the settings name are ever served, each under a fixed address
/// with a fixed type; a setting that cannot be followed is said in the log and the portal keeps its own look.
/// </summary>
public sealed class OwnLook
{
    private const long Largest = 512 * 1024;
    private static readonly Dictionary<string, string> Pictures = new(StringComparer.OrdinalIgnoreCase)
    {
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".webp"] = "image/webp",
    };
    private static readonly Dictionary<string, string> Sheets = new(StringComparer.OrdinalIgnoreCase) { [".css"] = "text/css" };

    public OwnLook(Site site, ILogger<OwnLook> log)
    {
        Colours = Find(site.OwnFolder, site.ColourFile, Sheets, "Site:ColourFile", log);
        Logo = Find(site.OwnFolder, site.Logo, Pictures, "Site:Logo", log);
    }

    public OwnFile? Colours { get; }

    public OwnFile? Logo { get; }

    private static OwnFile? Find(
        string folder,
        string? name,
        Dictionary<string, string> kinds,
        string setting,
        ILogger<OwnLook> log
    )
    {
        if (name is null)
        {
            return null;
        }

        var file = new FileInfo(Path.Combine(folder, Path.GetFileName(name)));
        var wrong = Wrong(name, file, kinds);
        if (wrong is not null)
        {
            log.LogWarning("{Setting} is not followed: {Reason}", setting, wrong);
            return null;
        }

        return new OwnFile(file.FullName, kinds[file.Extension]);
    }

    private static string? Wrong(string name, FileInfo file, Dictionary<string, string> kinds) =>
        Path.GetFileName(name) != name ? $"'{name}' must be the bare name of a file in {file.DirectoryName}"
        : !kinds.ContainsKey(file.Extension) ? $"'{name}' must end in {string.Join(" or ", kinds.Keys)}"
        : !file.Exists ? $"there is no '{name}' in {file.DirectoryName}"
        : file.Length > Largest ? $"'{name}' is larger than {Largest / 1024} kB"
        : null;
}

/// <summary>One file of the salon's own, found when the portal started.</summary>
public sealed record OwnFile(string Place, string Kind);

internal static class OwnLookRoutes
{
    public const string Colours = "/own/colours";
    public const string Logo = "/own/logo";

    public static void MapOwnLook(this WebApplication app)
    {
        app.MapGet(Colours, (OwnLook look) => Answer(look.Colours)).AllowAnonymous();
        app.MapGet(Logo, (OwnLook look) => Answer(look.Logo)).AllowAnonymous();
    }

    private static IResult Answer(OwnFile? file)
    {
        if (file is null || !File.Exists(file.Place))
        {
            return Results.NotFound();
        }

        var changed = new DateTimeOffset(File.GetLastWriteTimeUtc(file.Place));
        return Results.File(
            file.Place,
            file.Kind,
            lastModified: changed,
            entityTag: new EntityTagHeaderValue($"\"{changed.Ticks:x}\"")
        );
    }
}
