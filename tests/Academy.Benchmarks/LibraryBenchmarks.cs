using Academy.Modules;
using Academy.Modules.Comparing;
using Academy.Modules.Parcels;
using Academy.Storage.Sqlite;
using Academy.Web.Library;
using BenchmarkDotNet.Attributes;

namespace Academy.Benchmarks;

/// <summary>The library: read at the start, its largest page for the first reader and for everybody after, and two editions side by side.</summary>
[MemoryDiagnoser]
[Config(typeof(InThisProcess))]
public class LibraryBenchmarks
{
    private ModuleLibrary _library = null!;
    private ModuleFiles _largest = null!;
    private Lesson _read = null!;

    /// <summary>The library of the repository.</summary>
    [GlobalSetup]
    public void Read()
    {
        _library = ModuleLibrary.Load(Repository.Folder("modules"));
        _read = _library.Lessons.MaxBy(lesson => lesson.Text.Length)!;
        _largest = ModuleFiles.Of(_read);
    }

    /// <summary>What the start of the portal waits for.</summary>
    [Benchmark]
    public int LoadTheLibrary() => ModuleLibrary.Load(Repository.Folder("modules")).Lessons.Count;

    /// <summary>One lesson from its text, with everything that can be found in it, and no page yet.</summary>
    [Benchmark]
    public int ReadTheLargest() => _largest.Read().Findings.Count;

    /// <summary>The same, and its page for the first reader.</summary>
    [Benchmark]
    public int ReadTheLargestAndItsPage() => _largest.Read().Lesson!.Html.Length;

    /// <summary>The page for everybody after.</summary>
    [Benchmark]
    public int ThePageOfTheLargestAgain() => _read.Html.Length;

    /// <summary>A text beside itself with every tenth line changed.</summary>
    [Benchmark]
    public int CompareTwoEditions() => EditionComparison.Of(_largest, Changed(_largest)).Lesson.Count;

    private static ModuleFiles Changed(ModuleFiles files) =>
        files with
        {
            Text = string.Join(
                '\n',
                files.Text.Split('\n').Select((line, place) => place % 10 == 9 && line.Length > 0 ? line + " Really." : line)
            ),
        };
}

/// <summary>Looking for words in 500 modules: made ready for the first search, and searched after that.</summary>
[MemoryDiagnoser]
[Config(typeof(InThisProcess))]
public class SearchBenchmarks : IDisposable
{
    private const int Modules = 500;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("academy-500-");
    private SqliteModuleSearch _search = null!;
    private Shelf _shelf = null!;
    private ModuleIndex _index = null!;

    /// <summary>The library of the repository, twenty times over under other names.</summary>
    [GlobalSetup]
    public async Task FillAsync()
    {
        var lessons = ModuleLibrary.Load(Repository.Folder("modules")).Lessons;
        for (var copy = 0; copy < Modules; copy++)
            Write(ModuleFiles.Of(lessons[copy % lessons.Count]), copy);
        _shelf = new Shelf(ModuleLibrary.Load(_folder.FullName), [], []);
        _search = new SqliteModuleSearch();
        _index = new ModuleIndex(_search);
        await _index.FindAsync(_shelf, "water", CancellationToken.None);
    }

    /// <summary>What the first search after a start waits for.</summary>
    [Benchmark]
    public async Task<int> ReadFiveHundredAndSearch()
    {
        using SqliteModuleSearch search = new();
        using ModuleIndex index = new(search);
        return (await index.FindAsync(_shelf, "water", CancellationToken.None)).Count;
    }

    /// <summary>A word that stands in most of them.</summary>
    [Benchmark]
    public async Task<int> SearchForACommonWord() => (await _index.FindAsync(_shelf, "dog", CancellationToken.None)).Count;

    /// <summary>Two words that few of them have.</summary>
    [Benchmark]
    public async Task<int> SearchForTwoRareWords() =>
        (await _index.FindAsync(_shelf, "quick burr", CancellationToken.None)).Count;

    /// <summary>Takes the folder away again.</summary>
    [GlobalCleanup]
    public void Dispose()
    {
        GC.SuppressFinalize(this);
        _index.Dispose();
        _search.Dispose();
        _folder.Delete(recursive: true);
    }

    private void Write(ModuleFiles files, int copy)
    {
        var name = FormattableString.Invariant($"{files.Name}-{copy}");
        var folder = _folder.CreateSubdirectory(name);
        File.WriteAllText(
            Path.Combine(folder.FullName, ModuleFiles.TextFile),
            files.Text.Replace($"name: {files.Name}", $"name: {name}", StringComparison.Ordinal)
        );
        foreach (var (file, bytes) in files.Pictures)
            File.WriteAllBytes(Path.Combine(folder.FullName, file), bytes.ToArray());
    }
}
