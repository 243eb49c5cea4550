using Academy.Competence;

namespace Academy.Modules.Reading;

/// <summary>Gathers what is found in one file.</summary>
internal sealed class Findings(string file, Severity worst = Severity.Broken)
{
    private readonly List<Finding> _found = [];
    private int _above;

    public bool AnyBroken => _found.Exists(finding => finding.Severity == Severity.Broken);

    public bool Any => _found.Count > 0;

    /// <summary>Something that keeps the module from being served; in a picture only the picture is left out.</summary>
    public void Broken(int line, string message) => Add(line, worst, message);

    public void Fault(int line, string message) => Add(line, Severity.Fault, message);

    public void Hint(int line, string message) => Add(line, Severity.Hint, message);

    /// <summary>Until it is disposed, lines are counted from the one after so many: for a piece that is read by itself.</summary>
    public IDisposable Below(int lines) => new Piece(this, lines);

    public Listed<Finding> InOrder() => [.. _found.OrderBy(finding => finding.Line)];

    private void Add(int line, Severity severity, string message) =>
        _found.Add(new(file, line == 0 ? 0 : line + _above, severity, message));

    private sealed class Piece : IDisposable
    {
        private readonly Findings _all;

        public Piece(Findings all, int lines) => (_all = all)._above = lines;

        public void Dispose() => _all._above = 0;
    }
}
