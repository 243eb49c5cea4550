namespace Academy.Modules;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth a look. The module is served and the check passes.</summary>
    Hint,

    /// <summary>Has to be put right. The module is served, without the part that is not safe, and the check fails.</summary>
    Fault,

    /// <summary>The module cannot be served until it is put right.</summary>
    Broken,
}

/// <summary>Something about a module file that its author should know.</summary>
/// <param name="File">The file, relative to the folder of all modules, with forward slashes.</param>
/// <param name="Line">The line, counted from 1; 0 where the file as a whole is meant.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Message">What is wrong and what to do, in plain words.</param>
public sealed record Finding(string File, int Line, Severity Severity, string Message)
{
    /// <summary>One line for a log or a terminal.</summary>
    public override string ToString() => $"{File}{(Line > 0 ? $":{Line}" : "")}: {Word}: {Message}";

    private string Word =>
        Severity switch
        {
            Severity.Hint => "hint",
            Severity.Fault => "fault",
            _ => "broken",
        };
}
