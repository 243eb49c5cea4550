using System.Collections.Immutable;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules.Pictures;
using Academy.Modules.Reading;

namespace Academy.Modules;

/// <summary>All modules of a folder, read once and kept: a library never changes after it was loaded.</summary>
public sealed class ModuleLibrary
{
    private readonly ImmutableDictionary<string, Lesson> _lessons;

    private ModuleLibrary(Listed<Lesson> lessons, Listed<Finding> findings)
    {
        Lessons = lessons;
        Modules = [.. lessons.Select(lesson => lesson.Module)];
        Findings = findings;
        _lessons = lessons.ToImmutableDictionary(lesson => lesson.Module.Name.Value, StringComparer.Ordinal);
    }

    /// <summary>The modules that can be served, by name.</summary>
    public Listed<Module> Modules { get; }

    /// <summary>The same modules with their pages and pictures.</summary>
    public Listed<Lesson> Lessons { get; }

    /// <summary>What the authors should know, by file and line.</summary>
    public Listed<Finding> Findings { get; }

    /// <summary>The lesson of that name, or null.</summary>
    public Lesson? Find(string name) => _lessons.GetValueOrDefault(name);

    /// <summary>A picture that the lesson of that name shows, or null.</summary>
    public Picture? FindPicture(string name, string file) => Find(name)?.Pictures.GetValueOrDefault(file);

    /// <summary>Reads every module in a folder: one folder each, with a file module.md and its pictures.</summary>
    /// <remarks>A broken module is left out and told in <see cref="Findings"/>; it never keeps the others from being served.</remarks>
    public static ModuleLibrary Load(string folder)
    {
        if (!Directory.Exists(folder))
            return new(
                [],
                [new(Path.GetFileName(folder), 0, Severity.Broken, "The folder of the modules is missing. Say where it is.")]
            );
        var read = Directory
            .EnumerateDirectories(folder)
            .Where(module => !Path.GetFileName(module).StartsWith('.'))
            .Order(StringComparer.Ordinal)
            .AsParallel()
            .AsOrdered()
            .Select(ModuleReader.Read)
            .ToArray();
        return new([.. read.Select(module => module.Lesson).OfType<Lesson>()], [.. read.SelectMany(module => module.Findings)]);
    }
}
