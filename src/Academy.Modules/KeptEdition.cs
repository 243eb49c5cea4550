using System.Collections.Immutable;
using System.Text.Json;
using Academy.Competence;
using Academy.Modules.Parcels;
using Academy.Modules.Pictures;
using Academy.Modules.Reading;

namespace Academy.Modules;

/// <summary>A whole edition as one piece of text, so that what somebody saw can be shown after the files have changed.</summary>
public static class KeptEdition
{
    /// <summary>The edition as text: the module's file and the pictures that it shows.</summary>
    public static string Of(Lesson lesson) =>
        JsonSerializer.Serialize(
            new Kept(
                lesson.Text,
                lesson
                    .Pictures.Values.OrderBy(picture => picture.File, StringComparer.Ordinal)
                    .ToDictionary(picture => picture.File, picture => picture.Bytes.ToArray(), StringComparer.Ordinal)
            )
        );

    /// <summary>The lesson of a kept edition, or null where the text does not give the edition of that hash.</summary>
    /// <remarks>
    /// It is read by today's rules: whoever adds one that makes a module <see cref="Severity.Broken"/> has to let older editions be.
    /// </remarks>
    public static Lesson? Read(ModuleName name, string hash, string kept)
    {
        var edition = JsonSerializer.Deserialize<Kept>(kept);
        Findings findings = new(name.Value);
        var lesson = edition is null ? null : ModuleReader.Lesson(name.Value, edition.Text, () => Pictures(edition), findings);
        return !findings.AnyBroken && lesson?.Module.Hash == hash ? lesson : null;
    }

    /// <summary>The files of a kept edition as they were, looked at by nobody: to be compared, never to be shown as a page.</summary>
    public static ModuleFiles Files(ModuleName name, string kept)
    {
        var edition = JsonSerializer.Deserialize<Kept>(kept)!;
        return new(
            name.Value,
            edition.Text,
            edition.Pictures.ToImmutableSortedDictionary(
                picture => picture.Key,
                picture => (ReadOnlyMemory<byte>)picture.Value,
                StringComparer.Ordinal
            )
        );
    }

    private static ImmutableDictionary<string, Picture> Pictures(Kept edition) =>
        edition
            .Pictures.Select(picture => PictureReader.Of(picture.Key, picture.Value, new Findings(picture.Key)))
            .OfType<Picture>()
            .ToImmutableDictionary(picture => picture.File, StringComparer.Ordinal);

    private sealed record Kept(string Text, Dictionary<string, byte[]> Pictures);
}
