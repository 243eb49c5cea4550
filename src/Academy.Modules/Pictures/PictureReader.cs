using System.Text;
using Academy.Modules.Reading;

namespace Academy.Modules.Pictures;

/// <summary>Reads a module's pictures and refuses those that are not plain pictures.</summary>
internal static class PictureReader
{
    public const int LargestFile = 512 * 1024;
    private const int LargestSide = 8000;

    public static Picture? Of(string name, byte[] bytes, Findings findings)
    {
        if (!Slug.Is(Path.GetFileNameWithoutExtension(name)))
            findings.Fault(0, $"The name of a picture has to be {Slug.Words}.");
        var picture = Path.GetExtension(name) == ".svg" ? Svg(name, bytes, findings) : Photo(name, bytes, findings);
        if (picture is { Width: > LargestSide } or { Height: > LargestSide })
            findings.Fault(0, $"The picture is {picture.Width} by {picture.Height}; {LargestSide} is the most. Make it smaller.");
        return findings.Any ? null : picture;
    }

    private static Picture? Photo(string name, byte[] bytes, Findings findings)
    {
        if (PhotoKind.All.FirstOrDefault(kind => kind.Ending == Path.GetExtension(name)) is not { } kind)
        {
            findings.Fault(0, "This is no kind of picture that a module can show. Take it out.");
            return null;
        }
        if (kind.SizeOf(bytes) is not { } size)
        {
            findings.Fault(0, $"The file is not a {kind.Word} picture, whatever its name says. Save it as {kind.Word}.");
            return null;
        }
        if (kind.TellsMore(bytes))
            findings.Fault(
                0,
                "The picture may tell where and with what it was taken. Save it without that, or take it in through the portal."
            );
        return new(name, kind.ContentType, bytes, size.Width, size.Height);
    }

    private static Picture? Svg(string name, byte[] bytes, Findings findings)
    {
        if (FileText.Of(bytes, findings) is not { } text || SvgCheck.Of(text, findings) is not { } size)
            return null;
        return new(name, "image/svg+xml", Encoding.UTF8.GetBytes(text), size.Width, size.Height) { Origin = size.Origin };
    }
}
