namespace Academy.Modules;

/// <summary>How long one look at a piece of text may take before the file counts as one that cannot be read.</summary>
internal static class Patience
{
    public const int Milliseconds = 1000;
}
