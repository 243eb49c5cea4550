namespace Academy.Modules;

/// <summary>Checks a folder of modules for its authors.</summary>
public static class CheckModules
{
    /// <summary>Writes every finding on a line of its own and a last line that counts.</summary>
    /// <returns>0 where nothing has to be put right, otherwise 1; hints alone give 0.</returns>
    public static int Run(string folder, TextWriter output)
    {
        var library = ModuleLibrary.Load(folder);
        foreach (var finding in library.Findings)
            output.WriteLine(finding);
        var wrong = library.Findings.Count(finding => finding.Severity > Severity.Hint);
        output.WriteLine(
            $"Modules that can be served: {library.Modules.Count}. To put right: {wrong}. Hints: {library.Findings.Count - wrong}."
        );
        return wrong == 0 ? 0 : 1;
    }
}
