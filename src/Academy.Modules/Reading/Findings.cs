using Academy.Competence;

namespace Academy.Modules.Reading;

/// <summary>Gathers what is found in one file.</summary>
internal sealed class Findings(string file, Severity worst = Severity.Broken)
{
    private readonly List<Finding> _found = [];

    public bool AnyBroken => _found.Exists(finding => finding.Severity == Severity.Broken);

    public bool Any => _found.Count > 0;

    /// <summary>Something that keeps the module from being served; in a picture only the picture is left out.</summary>
    public void Broken(int line, string message) => _found.Add(new(file, line, worst, message));

    public void Fault(int line, string message) => _found.Add(new(file, line, Severity.Fault, message));

    public void Hint(int line, string message) => _found.Add(new(file, line, Severity.Hint, message));

    public Listed<Finding> InOrder() => [.. _found.OrderBy(finding => finding.Line)];
}
