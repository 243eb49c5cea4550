namespace Academy.Web.Wording;

/// <summary>Numbers in words: small ones are counts out of something, never a bare percentage.</summary>
public static class Counts
{
    /// <summary>"0 grooms", "1 groom", "2 grooms".</summary>
    public static string Of(int count, string one, string? many = null) => $"{count} {(count == 1 ? one : many ?? one + "s")}";

    /// <summary>"11 of 15".</summary>
    public static string OutOf(int have, int need) => $"{have} of {need}";

    /// <summary>"2 of the last 20 needed fixing"; "none of the last 20 needed fixing"; "no rated groom yet".</summary>
    public static string NeededFixing(int fixedCount, int last) =>
        (fixedCount, last) switch
        {
            (_, 0) => "no rated groom yet",
            (0, 1) => "the last one suited",
            (1, 1) => "the last one needed fixing",
            (0, _) => $"none of the last {last} needed fixing",
            _ => $"{fixedCount} of the last {last} needed fixing",
        };

    /// <summary>"18 of the last 20 suited"; "no rated groom yet".</summary>
    public static string Suited(int suited, int last) => last == 0 ? "no rated groom yet" : $"{suited} of the last {last} suited";

    /// <summary>A chance as people say it: "about 1 in 20", "about 18 in 20", "less than 1 in 1000".</summary>
    public static string Chance(double chance) =>
        chance switch
        {
            < 0.001 => "less than 1 in 1000",
            < 0.4 => $"about 1 in {Math.Round(1 / chance, MidpointRounding.AwayFromZero)}",
            < 0.975 => $"about {Math.Round(chance * 20, MidpointRounding.AwayFromZero)} in 20",
            _ => "more than 19 in 20",
        };

    /// <summary>"Ines", "Ines or Ruben", "Ines, Ruben or Kit".</summary>
    public static string Or(IReadOnlyList<string> names) => Joined(names, "or");

    /// <summary>"Ines", "Ines and Ruben", "Ines, Ruben and Kit".</summary>
    public static string And(IReadOnlyList<string> names) => Joined(names, "and");

    /// <summary>"24.5 °C" from tenths of a degree.</summary>
    public static string Celsius(int tenths) => (tenths / 10m).ToString("0.0", SalonTime.Culture) + " °C";

    private static string Joined(IReadOnlyList<string> names, string word) =>
        names.Count switch
        {
            0 => "nobody",
            1 => names[0],
            _ => $"{string.Join(", ", names.SkipLast(1))} {word} {names[^1]}",
        };
}
