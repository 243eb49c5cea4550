using System.Globalization;
using Academy.Modules;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;

namespace Academy.Web.Features.Parcels;

/// <summary>A module that can be packed by itself.</summary>
public sealed record PackLine(string Title, string Note, string Href);

/// <summary>What can be packed.</summary>
/// <param name="Own">The salon's own editions together; null where it has none.</param>
public sealed record ParcelsView(
    string AllHref,
    string AllWords,
    string? OwnHref,
    string OwnWords,
    IReadOnlyList<PackLine> Modules
)
{
    /// <summary>Everything on the shelf.</summary>
    public const string All = "all";

    /// <summary>The salon's own editions.</summary>
    public const string Own = "own";

    public static ParcelsView Of(Shelf shelf) =>
        new(
            Paths.PackModules(All),
            $"All {Counts.Of(shelf.Lessons.Count, "module")} as they are studied here",
            shelf.Own.IsEmpty ? null : Paths.PackModules(Own),
            $"The salon’s own, {Counts.Of(shelf.Own.Count, "module")}",
            [
                .. shelf.Lessons.Select(lesson => new PackLine(
                    lesson.Module.Title,
                    $"edition {lesson.Module.Edition}, {(shelf.Own.ContainsKey(lesson.Module.Name.Value) ? "the salon’s own" : "from the library")}",
                    Paths.PackModules(lesson.Module.Name.Value)
                )),
            ]
        );

    /// <summary>What the file is called: "modules-2026-06-10.zip", "heat-stroke-2026-06-10.zip".</summary>
    public static string FileOf(string what, DateOnly today)
    {
        var name = what is All or Own ? "modules" : what;
        return $"{name}-{today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}.zip";
    }

    /// <summary>"heat-stroke/x.exe: take this out"; of the parcel as a whole only what is wrong.</summary>
    public static string Words(Finding refusal) =>
        refusal.File.Length == 0 ? $"The parcel: {refusal.Message}" : $"{refusal.File}: {refusal.Message}";
}
