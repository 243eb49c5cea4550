using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Academy.Competence;
using Academy.Modules.Pictures;
using Academy.Modules.Reading;

namespace Academy.Modules.Parcels;

/// <summary>One module as it lies in its folder, not looked through yet.</summary>
/// <param name="Name">The name of the folder.</param>
/// <param name="Text">The words of module.md, with line feeds.</param>
/// <param name="Pictures">The pictures by file name.</param>
public sealed record ModuleFiles(string Name, string Text, ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Pictures)
{
    /// <summary>The file in which the words are.</summary>
    public const string TextFile = "module.md";

    /// <summary>The kinds of picture that a module may show.</summary>
    public static IReadOnlyList<string> PictureKinds => ModuleReader.PictureKinds;

    /// <summary>The largest picture, in bytes.</summary>
    public const int LargestPicture = PictureReader.LargestFile;

    /// <summary>The largest text, in bytes.</summary>
    public const int LargestText = ModuleText.LargestFile;

    /// <summary>The longest line of a text, in characters.</summary>
    public const int LongestLine = ModuleText.LongestLine;

    /// <summary>How large a text is that is too large, in kilobytes begun; null for one that may be.</summary>
    public static int? KilobytesOver(string text) =>
        Encoding.UTF8.GetByteCount(text) is var length && length > LargestText ? (length + 1023) / 1024 : null;

    /// <summary>The files of a lesson as they were read.</summary>
    public static ModuleFiles Of(Lesson lesson) =>
        new(
            lesson.Module.Name.Value,
            lesson.Text,
            lesson.Pictures.Values.ToImmutableSortedDictionary(
                picture => picture.File,
                picture => picture.Bytes,
                StringComparer.Ordinal
            )
        );

    /// <summary>The lesson that these files make, or null where it is broken, and all that was found.</summary>
    /// <remarks>The same rules as for a folder; it never throws, whatever the files hold.</remarks>
    public (Lesson? Lesson, Listed<Finding> Findings) Read()
    {
        Findings findings = new($"{Name}/{TextFile}");
        List<Finding> inPictures = [];
        var lesson = Slug.Is(Name) && IsSmallEnough(findings) ? Guarded(findings, inPictures) : null;
        if (!Slug.Is(Name))
            findings.Broken(0, $"The name of a module has to be {Slug.Words}.");
        return (findings.AnyBroken ? null : lesson, [.. findings.InOrder(), .. inPictures]);
    }

    private bool IsSmallEnough(Findings findings)
    {
        if (KilobytesOver(Text) is { } kilobytes)
            findings.Broken(0, $"The text has {kilobytes} KB; {LargestText / 1024} KB are the most. Make it shorter.");
        return !findings.Any;
    }

    private Lesson? Guarded(Findings findings, List<Finding> inPictures)
    {
        try
        {
            return ModuleReader.Lesson(Name, Text.ReplaceLineEndings("\n"), () => Looked(inPictures), findings);
        }
        catch (RegexMatchTimeoutException)
        {
            findings.Broken(0, "The text takes too long to read. Look for very long rows of one character.");
            return null;
        }
    }

    private Dictionary<string, Picture> Looked(List<Finding> inPictures)
    {
        Dictionary<string, Picture> pictures = new(StringComparer.Ordinal);
        foreach (var (file, bytes) in Pictures)
        {
            Findings found = new($"{Name}/{file}", worst: Severity.Fault);
            if (bytes.Length > LargestPicture)
                found.Fault(0, $"The picture has {bytes.Length / 1024} KB; {LargestPicture / 1024} KB are the most.");
            else if (PictureReader.Of(file, bytes.ToArray(), found) is { } picture)
                pictures.Add(file, picture);
            inPictures.AddRange(found.InOrder());
        }
        return pictures;
    }
}
