namespace Academy.Competence.Decisions;

/// <summary>What the owner limits a clearance to. Recency stands in for an end date, so every limit is optional.</summary>
/// <param name="Until">The last day on which it holds, included; null for no end.</param>
/// <param name="NotOnHotDays">Whether it does not hold on a hot day.</param>
/// <param name="UpToKg">The heaviest dog it holds for, in kilograms, included; null for any weight.</param>
/// <param name="OnlyWithSeniorIn">Whether it holds only while another senior (or the owner) is in the building.</param>
public sealed record Limits(DateOnly? Until = null, bool NotOnHotDays = false, int? UpToKg = null, bool OnlyWithSeniorIn = false)
{
    /// <summary>No limit.</summary>
    public static readonly Limits None = new();
}
