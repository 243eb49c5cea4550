using Academy.Competence.Skills;

namespace Academy.Competence.Trade;

/// <summary>Clipper blades and guard combs by the number that the trade calls them.</summary>
/// <remarks>
/// The higher the number, the shorter the cut. Numbers and full or skipped teeth are the trade's own, the same for every maker;
/// which technique takes a blade is common practice, no published source.
/// </remarks>
public static class Blades
{
    /// <summary>A guard comb over a blade.</summary>
    public const string Comb = "comb";

    /// <summary>Those that a salon commonly has, from the shortest cut to the longest, and the guard comb.</summary>
    public static readonly Listed<string> Common =
    [
        "40",
        "30",
        "15",
        "10",
        "9",
        "8.5",
        "7F",
        "7",
        "5F",
        "5",
        "4F",
        "4",
        "3F",
        "3",
        Comb,
    ];

    /// <summary>Whether every second tooth is missing, so that loose skin, folds and nipples can be caught between.</summary>
    public static bool IsSkipTooth(string number) => number is "7" or "6" or "5" or "4" or "3";

    /// <summary>Whether the blade cuts so short that it belongs on no body: surgical lengths, for pads and under combs.</summary>
    public static bool IsSurgical(string number) => number is "50" or "40" or "30";

    /// <summary>Techniques for which somebody may have a clipper in her hand.</summary>
    public static readonly Listed<SkillCode> TakenFor =
    [
        SkillBook.PadsAndFeet,
        SkillBook.BodyScissoring,
        SkillBook.DeMatting,
        SkillBook.FaceScissoring,
        SkillBook.CoolingClip,
    ];
}
