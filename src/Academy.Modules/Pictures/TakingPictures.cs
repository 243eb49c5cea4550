using Academy.Competence;
using Academy.Modules.Reading;
using SkiaSharp;

namespace Academy.Modules.Pictures;

/// <summary>Takes in a picture that somebody sends: a drawing as it is, a photo written anew, small and with nothing beside it.</summary>
public static class TakingPictures
{
    /// <summary>The largest file that may be sent, in bytes.</summary>
    public const int LargestSent = 5 * 1024 * 1024;

    /// <summary>The most points that a photo may have: 40 million, four bytes each while it is read.</summary>
    public const int MostPoints = 40_000_000;

    /// <summary>The longest side that a photo keeps, in points: twice the width of a lesson's column.</summary>
    public const int LongestSide = 1600;

    // Half a megabyte is what the reader of modules lets through; the first of these that fits is kept.
    private static readonly (int Side, int Quality)[] Tries =
    [
        (LongestSide, 85),
        (LongestSide, 75),
        (1280, 75),
        (1024, 70),
        (800, 60),
        (560, 50),
    ];

    // A photo takes a hundred megabytes while it is read: one after the other.
    private static readonly Lock OneAtATime = new();

    /// <summary>What a file is called in a module: its own name in small letters and hyphens, without its ending.</summary>
    public static string NameFrom(string file)
    {
        var name = Slug.Of(Path.GetFileNameWithoutExtension(file).Replace('_', ' ').Replace('-', ' '));
        return name.Length is > 0 and <= 60 ? name : "picture";
    }

    /// <summary>The picture as it is kept, or what is wrong with it.</summary>
    /// <param name="name">What it is to be called, without an ending.</param>
    /// <param name="sent">The file as it was sent, whatever its name said.</param>
    /// <param name="ending">The ending that it has to have, where it takes another's place; otherwise it gets the one that fits.</param>
    public static (Picture? Picture, Listed<Finding> Findings) Take(string name, ReadOnlyMemory<byte> sent, string? ending = null)
    {
        Findings findings = new(name, worst: Severity.Fault);
        var picture = Taken(name, sent, ending, findings);
        return (findings.Any ? null : picture, findings.InOrder());
    }

    /// <summary>A picture that was taken in before, looked through again; null where it may not be shown.</summary>
    public static Picture? Again(string file, ReadOnlyMemory<byte> kept) =>
        PictureReader.Of(file, kept.ToArray(), new Findings(file));

    private static Picture? Taken(string name, ReadOnlyMemory<byte> sent, string? ending, Findings findings)
    {
        if (!Slug.Is(name))
            findings.Fault(0, $"The name of a picture has to be {Slug.Words}.");
        if (sent.Length > LargestSent)
            findings.Fault(0, $"The file has {sent.Length / 1024} KB; {LargestSent / 1024} KB are the most. Make it smaller.");
        if (findings.Any)
            return null;
        var kind = PhotoKind.Of(sent.Span);
        if (kind is null && !IsMarkup(sent.Span))
            findings.Fault(
                0,
                "This is no picture that a module can show. Choose a photo (PNG, JPEG or WebP) or a drawing (SVG)."
            );
        else if (ending is not null && (ending == ".svg") != (kind is null))
            findings.Fault(
                0,
                "A drawing takes the place of a drawing and a photo that of a photo. Take this in under a name of its own."
            );
        else
            return kind is null ? Drawing(name, sent, findings) : Photo(name, sent, kind, ending, findings);
        return null;
    }

    private static bool IsMarkup(ReadOnlySpan<byte> sent) =>
        (sent.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? sent[3..] : sent).TrimStart(" \t\r\n"u8).StartsWith("<"u8);

    private static Picture? Drawing(string name, ReadOnlyMemory<byte> sent, Findings findings)
    {
        if (sent.Length <= PictureReader.LargestFile)
            return PictureReader.Of($"{name}.svg", sent.ToArray(), findings);
        findings.Fault(
            0,
            $"The drawing has {sent.Length / 1024} KB; {PictureReader.LargestFile / 1024} KB are the most. Make it simpler, or send a photo of it."
        );
        return null;
    }

    private static Picture? Photo(string name, ReadOnlyMemory<byte> sent, PhotoKind kind, string? ending, Findings findings)
    {
        // The size in the head of the file is asked before a point is read: a small file may stand for thousands of millions.
        var (width, height) = kind.SizeOf(sent.Span)!.Value;
        if ((long)width * height > MostPoints)
        {
            findings.Fault(
                0,
                $"The photo is {width} by {height} points; {MostPoints / 1_000_000} million together are the most. Make it smaller."
            );
            return null;
        }
        lock (OneAtATime)
        {
            using var photo = Read(sent);
            if (photo is null)
                findings.Fault(0, "The photo is damaged, or breaks off. Save it anew and send that.");
            return photo is null
                ? null
                : Written(name, photo, ending is null ? kind : KindOf(ending), ending is not null, findings);
        }
    }

    private static PhotoKind KindOf(string ending) => PhotoKind.All.First(kind => kind.Ending == ending);

    // Upright, in the colours of screens, and no larger than is kept.
    private static SKBitmap? Read(ReadOnlyMemory<byte> sent)
    {
        using var bytes = SKData.CreateCopy(sent.Span);
        using var codec = SKCodec.Create(bytes);
        if (codec is null || (long)codec.Info.Width * codec.Info.Height > MostPoints)
            return null;
        var times = Math.Max(1, Math.Max(codec.Info.Width, codec.Info.Height) / LongestSide);
        var size = codec.GetScaledDimensions(1f / times);
        using SKBitmap read = new(
            new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb())
        );
        return codec.GetPixels(read.Info, read.GetPixels()) == SKCodecResult.Success ? Upright(read, codec) : null;
    }

    private static SKBitmap Upright(SKBitmap read, SKCodec codec)
    {
        var turned = codec.EncodedOrigin;
        var isAcross = turned >= SKEncodedOrigin.LeftTop;
        var scale = Math.Min(1f, (float)LongestSide / Math.Max(read.Width, read.Height));
        var (width, height) = (Scaled(read.Width, scale), Scaled(read.Height, scale));
        SKBitmap upright = new(
            new SKImageInfo(
                isAcross ? height : width,
                isAcross ? width : height,
                SKColorType.Rgba8888,
                codec.Info.AlphaType == SKAlphaType.Opaque ? SKAlphaType.Opaque : SKAlphaType.Premul,
                SKColorSpace.CreateSrgb()
            )
        );
        upright.Erase(SKColors.Transparent);
        using SKCanvas canvas = new(upright);
        canvas.SetMatrix(Turn(turned, width, height));
        Draw(read, canvas, width, height);
        return upright;
    }

    private static int Scaled(int side, float scale) => Math.Max(1, (int)Math.Round(side * scale));

    private static void Draw(SKBitmap bitmap, SKCanvas canvas, int width, int height)
    {
        using var image = SKImage.FromBitmap(bitmap);
        canvas.DrawImage(
            image,
            new SKRect(0, 0, width, height),
            new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear),
            paint: null
        );
    }

    // The eight orientations of Exif 2.3 (CIPA DC-008), tag 0x0112, as matrices from the stored picture to the upright one.
    private static SKMatrix Turn(SKEncodedOrigin turned, int width, int height) =>
        turned switch
        {
            SKEncodedOrigin.TopRight => new(-1, 0, width, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new(-1, 0, width, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new(1, 0, 0, 0, -1, height, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new(0, -1, height, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new(0, -1, height, -1, 0, width, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new(0, 1, 0, -1, 0, width, 0, 0, 1),
            _ => SKMatrix.Identity,
        };

    private static Picture? Written(string name, SKBitmap photo, PhotoKind kind, bool isKindAsked, Findings findings)
    {
        var isOpaque = photo.AlphaType == SKAlphaType.Opaque;
        // A PNG too large at full width is a photo, whatever it came as; a kind that was asked for stays, and gets smaller.
        (PhotoKind Kind, int Side, int Quality)[] tries =
            kind == PhotoKind.Png && !isKindAsked
                ?
                [
                    (kind, LongestSide, 100),
                    .. Tries.Select(size => (isOpaque ? PhotoKind.Jpeg : PhotoKind.WebP, size.Side, size.Quality)),
                ]
                : [.. Tries.Select(size => (kind, size.Side, size.Quality))];
        foreach (var (asked, side, quality) in tries)
        {
            using var written = Encoded(photo, asked, side, quality);
            if (written.Size <= PictureReader.LargestFile)
                return PictureReader.Of(name + asked.Ending, written.ToArray(), findings);
        }
        findings.Fault(
            0,
            $"The photo cannot be made smaller than {PictureReader.LargestFile / 1024} KB. Cut a part out of it, or send it as JPEG."
        );
        return null;
    }

    private static SKData Encoded(SKBitmap photo, PhotoKind kind, int side, int quality)
    {
        var scale = Math.Min(1f, (float)side / Math.Max(photo.Width, photo.Height));
        // Without a colour space the file says nothing of one, which is read as the colours of screens.
        using SKBitmap small = new(
            new SKImageInfo(Scaled(photo.Width, scale), Scaled(photo.Height, scale), photo.ColorType, photo.AlphaType)
        );
        small.Erase(SKColors.Transparent);
        using (SKCanvas canvas = new(small))
        {
            if (kind == PhotoKind.Jpeg)
                canvas.Clear(SKColors.White);
            Draw(photo, canvas, small.Width, small.Height);
        }
        using var image = SKImage.FromBitmap(small);
        return image.Encode(FormatOf(kind), quality);
    }

    private static SKEncodedImageFormat FormatOf(PhotoKind kind) =>
        kind == PhotoKind.Png ? SKEncodedImageFormat.Png
        : kind == PhotoKind.Jpeg ? SKEncodedImageFormat.Jpeg
        : SKEncodedImageFormat.Webp;
}
