using System.Text.RegularExpressions;
using Academy.Competence;
using Academy.Modules.Lessons;
using Academy.Modules.Pictures;

namespace Academy.Modules.Reading;

/// <summary>Reads one module's folder.</summary>
internal sealed class ModuleReader(string folder)
{
    private const string FileName = "module.md";
    internal static readonly string[] PictureKinds = [".svg", ".png", ".jpg", ".webp"];

    private readonly string _name = Path.GetFileName(folder);
    private readonly Findings _findings = new($"{Path.GetFileName(folder)}/{FileName}");
    private readonly List<Finding> _inPictures = [];

    /// <summary>The lesson, or null where it is broken, and all that was found.</summary>
    public static (Lesson? Lesson, Listed<Finding> Findings) Read(string folder)
    {
        ModuleReader reader = new(folder);
        var lesson = reader.Guarded();
        return (reader._findings.AnyBroken ? null : lesson, [.. reader._findings.InOrder(), .. reader._inPictures]);
    }

    // A file that makes a reader give up is that file's fault: it is told to the author, and the other modules are served.
    private Lesson? Guarded()
    {
        try
        {
            return Lesson();
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            _findings.Broken(0, $"The file cannot be read: {reason.Message}");
        }
        catch (RegexMatchTimeoutException)
        {
            _findings.Broken(0, "The file takes too long to read. Look for very long rows of one character.");
        }
        return null;
    }

    private Lesson? Lesson()
    {
        if (Bytes(FileName, ModuleText.LargestFile, _findings) is not { } bytes || FileText.Of(bytes, _findings) is not { } text)
            return null;
        return Lesson(_name, text, Pictures, _findings);
    }

    /// <summary>The lesson that this text makes; the pictures are read only where the text can be.</summary>
    public static Lesson? Lesson(string name, string text, Func<IReadOnlyDictionary<string, Picture>> pictures, Findings findings)
    {
        if (ModuleText.Of(text, findings) is not { } parts || FrontMatter.Of(parts.FrontMatter, name, findings) is not { } front)
            return null;
        var questions = QuizReader.Of(parts.Quiz, findings);
        QuizCheck.Of(front, questions, parts.QuizStart + 1, findings);
        parts.CheckLessonHoldsNoAnswer(findings);
        return findings.AnyBroken ? null : new LessonWriter(front, pictures(), findings).Write(text, parts.Lesson, questions);
    }

    private Dictionary<string, Picture> Pictures()
    {
        Dictionary<string, Picture> pictures = new(StringComparer.Ordinal);
        foreach (
            var file in Directory
                .EnumerateFileSystemEntries(folder)
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal)
        )
        {
            if (file == FileName)
                continue;
            Findings found = new($"{_name}/{file}", worst: Severity.Fault);
            if (!PictureKinds.Contains(Path.GetExtension(file)))
                found.Fault(
                    0,
                    $"A module's folder holds module.md and its pictures ({string.Join(", ", PictureKinds)}), nothing else. Take this out."
                );
            else if (
                Bytes(file, PictureReader.LargestFile, found) is { } bytes
                && PictureReader.Of(file, bytes, found) is { } picture
            )
                pictures.Add(file, picture);
            _inPictures.AddRange(found.InOrder());
        }
        return pictures;
    }

    private byte[]? Bytes(string name, int largest, Findings findings)
    {
        FileInfo file = new(Path.Combine(folder, name));
        if (!file.Exists)
            findings.Broken(0, "The file is missing. Put it there, or take the folder away.");
        else if (file.LinkTarget is not null)
            findings.Broken(0, "The file is only a pointer to another place. Put the file itself there.");
        else if (file.Length > largest)
            findings.Broken(0, $"The file has {file.Length / 1024} KB; {largest / 1024} KB are the most. Make it smaller.");
        return findings.Any ? null : File.ReadAllBytes(file.FullName);
    }
}
