using Academy.Modules;
using Academy.Storage;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Study;

/// <summary>Where somebody stopped reading.</summary>
/// <param name="Title">The module.</param>
/// <param name="Part">The heading.</param>
/// <param name="When">How long ago.</param>
/// <param name="Href">The part on the module's page.</param>
public sealed record GoOnLine(string Title, string Part, string When, string Href)
{
    /// <summary>Null at the beginning, where the part is no longer there, and once a quiz was handed in after it.</summary>
    public static GoOnLine? Of(ReadingPlace? place, Lesson lesson, DateTimeOffset? handedInAt, SalonTime time) =>
        place is not null
        && !(handedInAt >= place.At)
        && lesson.Parts.Skip(1).FirstOrDefault(part => part.Id == place.Part) is { } part
            ? new(lesson.Module.Title, part.Title, time.Ago(place.At), $"{Paths.Module(lesson.Module.Name.Value)}#{part.Id}")
            : null;
}
