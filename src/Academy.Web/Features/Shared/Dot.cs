namespace Academy.Web.Features.Shared;

/// <summary>What a senior found of one groom, as a dot shows it.</summary>
public enum DotVerdict
{
    Suited,
    NeededFixing,
    CriticalIncident,
    NotRated,
}

/// <summary>One groom among the last ones: what was found, on which day ("3 Apr"), and where to read it.</summary>
public sealed record Dot(DotVerdict Verdict, string Date, string Href);

internal static class DotVerdicts
{
    public static string Words(this DotVerdict verdict) =>
        verdict switch
        {
            DotVerdict.Suited => "suited",
            DotVerdict.NeededFixing => "needed fixing",
            DotVerdict.CriticalIncident => "critical incident",
            _ => "not rated",
        };

    public static string Drawing(this DotVerdict verdict) =>
        verdict switch
        {
            DotVerdict.Suited => "#mk-suited",
            DotVerdict.NeededFixing => "#mk-needed-fixing",
            DotVerdict.CriticalIncident => "#st-stood-down",
            _ => "#mk-no-rating",
        };

    public static string Shape(this DotVerdict verdict) =>
        verdict is DotVerdict.NeededFixing or DotVerdict.CriticalIncident ? "dot wrong" : "dot";
}
