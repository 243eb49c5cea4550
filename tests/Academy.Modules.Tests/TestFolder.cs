using System.Text;

namespace Academy.Modules.Tests;

/// <summary>A folder of modules that lives as long as one test.</summary>
internal sealed class TestFolder : IDisposable
{
    public TestFolder() => Root = Directory.CreateTempSubdirectory("academy-modules-").FullName;

    public string Root { get; }

    public static string SampleText => File.ReadAllText(Sample("module.md"));

    public static string SamplePicture => File.ReadAllText(Sample("press.svg"));

    /// <summary>The picture that a question asks about.</summary>
    public static string SampleBack => File.ReadAllText(Sample("back.svg"));

    /// <summary>The sound sample module, with one piece of its text replaced.</summary>
    public TestFolder WithSample(string from = "", string to = "", string name = "towels")
    {
        if (from.Length > 0)
            Assert.Contains(from, SampleText, StringComparison.Ordinal);
        return With(name, "module.md", from.Length > 0 ? SampleText.Replace(from, to, StringComparison.Ordinal) : SampleText)
            .WithSamplePictures(name);
    }

    public TestFolder WithSamplePictures(string name = "towels") =>
        With(name, "press.svg", SamplePicture).With(name, "back.svg", SampleBack);

    public TestFolder With(string module, string file, string text) => With(module, file, Encoding.UTF8.GetBytes(text));

    public TestFolder With(string module, string file, byte[] bytes)
    {
        Directory.CreateDirectory(Path.Combine(Root, module));
        File.WriteAllBytes(Path.Combine(Root, module, file), bytes);
        return this;
    }

    public ModuleLibrary Load() => ModuleLibrary.Load(Root);

    /// <summary>Loads and goes on, so that a test can name both the folder and the library in one line.</summary>
    public TestFolder Loaded(out ModuleLibrary library)
    {
        library = Load();
        return this;
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);

    private static string Sample(string file) => Path.Combine(AppContext.BaseDirectory, "data", "modules", "towels", file);
}
