using Academy.Competence;
using Academy.Modules.Parcels;
using Academy.Storage;

namespace Academy.Web.Features.Writing;

/// <summary>The text as somebody has it before her, and the save that she began from.</summary>
public sealed class WriteForm
{
    public string? Text { get; set; }

    /// <summary>Which save it began from; 0 where none is there.</summary>
    public long Version { get; set; }

    /// <summary>The text with the line ends that texts are kept with.</summary>
    public string Lines => (Text ?? "").ReplaceLineEndings("\n");

    public static WriteForm Of(Draft draft) => new() { Text = draft.Text, Version = draft.Version };

    /// <summary>What would be kept: the text is this author's, and nobody is asked to read it yet.</summary>
    internal Draft Over(Draft? there, string module, PersonId author, DateTimeOffset now) =>
        (there ?? DraftStart.Of(new(module), "", author, now)) with
        {
            Text = Lines,
            Author = author,
            SavedAt = now,
            AskedAt = null,
            // Whoever gave it back and then mends it herself has nothing given back to her.
            Returned = there?.Returned?.By == author ? null : there?.Returned,
            Version = Version,
        };

    /// <summary>Why it is not kept; null where it can be.</summary>
    public string? Wrong =>
        ModuleFiles.KilobytesOver(Lines) is { } kilobytes
            ? $"The text: it has {kilobytes} KB, and {ModuleFiles.LargestText / 1024} KB are the most. Make it shorter"
            : null;
}
