namespace Academy.Storage.Tests;

public sealed class TestFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("academy-");

    public string PathOf(string name) => Path.Combine(_folder.FullName, name);

    public void Dispose() => _folder.Delete(recursive: true);
}
