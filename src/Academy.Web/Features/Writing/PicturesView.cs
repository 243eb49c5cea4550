using Academy.Modules.Pictures;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Writing;

/// <summary>A picture that lies beside a draft.</summary>
/// <param name="Words">"1600 by 900, 312 KB; shown in the lesson".</param>
/// <param name="Line">The line that shows it.</param>
public sealed record PictureLine(string File, string Words, string Line, string Href);

/// <summary>The pictures of a draft.</summary>
public sealed record PicturesView(string Title, string Heading, IReadOnlyList<PictureLine> Pictures)
{
    /// <summary>The most pictures that a draft may have.</summary>
    public const int Most = 50;

    /// <summary>What may be sent.</summary>
    public static string Limits =>
        $"PNG, JPEG or WebP, or a drawing as SVG; at most {TakingPictures.LargestSent / (1024 * 1024)} MB. A photo is made smaller, "
        + $"{TakingPictures.LongestSide} points on its longer side, and what the camera wrote beside it, such as the place, is left out.";

    public static string TooLarge(long bytes) =>
        $"Picture: the file has {Math.Round(bytes / 1024.0 / 1024.0, 1)} MB, and {TakingPictures.LargestSent / (1024 * 1024)} MB are the most. Make it smaller";

    public static string TakenIn(Picture picture) => $"{picture.File} is taken in, {Size(picture)}.";

    internal static PicturesView Of(DraftRead read, string title) =>
        new(
            title,
            read.Pictures.Count == 0 ? "No pictures yet" : Counts.Of(read.Pictures.Count, "picture"),
            [.. read.Pictures.Select(picture => LineOf(picture.Key, picture.Value, read))]
        );

    private static PictureLine LineOf(string file, ReadOnlyMemory<byte> bytes, DraftRead read)
    {
        var shown =
            read.Lesson is not { } lesson ? ""
            : lesson.Pictures.ContainsKey(file) ? "; used"
            : "; not used yet";
        return new(
            file,
            TakingPictures.Again(file, bytes) is { } picture
                ? Size(picture) + shown
                : "Cannot be shown. Replace it, or take it out",
            WriteView.LineOf(file),
            Paths.DraftPicture(read.Draft.Module.Value, file)
        );
    }

    private static string Size(Picture picture) =>
        $"{picture.Width} by {picture.Height}, {Math.Max(1, picture.Bytes.Length / 1024)} KB";
}
