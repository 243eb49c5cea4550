using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;

namespace Academy.Web.Features.Thresholds;

/// <summary>The rows that an owner may choose between, and one of her own numbers.</summary>
internal static class RowChoices
{
    public const string Own = "own";
    public const string None = "none";

    private static readonly (string Code, string Note, RowProfile Row)[] Profiles =
    [
        ("basic", "15 marks, -3: smooth coats and everyday work", RowProfile.Basic),
        ("standard", "15 marks, -4: double, silky and combination coats", RowProfile.Standard),
        ("strict", "17 marks, -6: wool and wire", RowProfile.Strict),
        ("strictest", "23 marks, -8: for whoever thinks 1 in 5 is already too many", RowProfile.Strictest),
        ("short", "8 marks, -6: rare skills, whose row would otherwise never fill", RowProfile.Short),
    ];

    public static IReadOnlyList<Pick> Picks { get; } =
    [
        .. Profiles.Select(one => new Pick(one.Code, one.Code, one.Note)),
        new(Own, "own numbers", "written below"),
        new(None, "modules only", "no row, no breadth"),
    ];

    public static string Of(RowProfile? row) =>
        row is null ? None : Profiles.Where(one => one.Row == row).Select(one => one.Code).FirstOrDefault() ?? Own;

    public static RowProfile? Find(string? code) =>
        Profiles.Where(one => one.Code == code).Select(one => one.Row).FirstOrDefault();
}
