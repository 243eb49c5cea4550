using System.Globalization;
using Academy.Competence.Salons;
using AngleSharp.Dom;
using CsvHelper;

namespace Academy.Modules.Tests;

public class TaughtNumbersTests
{
    private static readonly string Data = Path.Combine(AppContext.BaseDirectory, "data", "trade");

    private static readonly ModuleLibrary Library = ModuleLibrary.Load(Repository.Folder("modules"));

    // data/trade/numbers*.csv, each row with its source.
    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_lesson_teaches_the_published_number(
        string module,
        string shown,
        double value,
        double published,
        double tolerance,
        string source
    )
    {
        Assert.Contains(shown, Words(module), StringComparison.Ordinal);
        Assert.True(Math.Abs(value - published) <= tolerance + 1e-9, $"{module} teaches {value}, but {source} says {published}");
    }

    public static TheoryData<string, string, double, double, double, string> Numbers() =>
        [
            .. Directory
                .EnumerateFiles(Data, "numbers*.csv")
                .Order(StringComparer.Ordinal)
                .SelectMany(file =>
                    Rows(
                        new
                        {
                            module = "",
                            shown = "",
                            value = 0d,
                            published = 0d,
                            tolerance = 0d,
                            source = "",
                        },
                        Path.GetFileName(file)
                    )
                )
                .Select(row => (row.module, row.shown, row.value, row.published, row.tolerance, row.source)),
        ];

    // data/trade/blade-lengths.csv.
    [Fact]
    public void The_blade_table_is_the_trades()
    {
        var trade = Blades().ToDictionary(blade => blade.Name, blade => (blade.Millimetres, blade.Teeth), StringComparer.Ordinal);
        var taught = TaughtBlades();

        Assert.Equal(15, taught.Length);
        Assert.All(taught, blade => Assert.Equal(trade[blade.Name], (blade.Millimetres, blade.Teeth)));
    }

    // 1 inch is 25.4 mm; nominal sizes are rounded by at most 0.15 mm, the longest by 0.4 mm (common practice, no published source).
    [Fact]
    public void Each_blade_length_agrees_with_its_inches() =>
        Assert.All(Blades(), blade => Assert.Equal(blade.Inches * 25.4, blade.Millimetres, blade.Millimetres < 13 ? 0.15 : 0.4));

    [Fact]
    public void The_hair_never_gets_longer_as_the_number_rises()
    {
        var lengths = TaughtBlades()
            .OrderByDescending(blade => double.Parse(blade.Name.TrimEnd('F'), CultureInfo.InvariantCulture))
            .Select(blade => blade.Millimetres);

        Assert.Equal(lengths.Order(), lengths);
    }

    [Fact]
    public void A_blade_of_7_or_longer_has_skip_teeth_unless_it_is_a_finishing_blade() =>
        Assert.All(
            TaughtBlades().Where(blade => blade.Millimetres > 3),
            blade => Assert.Equal(blade.Name.EndsWith('F') ? "full" : "skip", blade.Teeth)
        );

    // The salon's own limits (common practice, no published source) stand in the lesson as the rules have them.
    [Fact]
    public void The_heat_lesson_teaches_the_limits_that_the_rules_use()
    {
        HouseRules house = new();
        var words = Words("heat-stroke");

        Assert.Contains($"from {Degrees(house.HotFromTenthsC)} °C in the room", words, StringComparison.Ordinal);
        Assert.Contains($"a heat index of {house.HotFromIndexF} °F", words, StringComparison.Ordinal);
        Assert.Contains($"For dogs at risk, from {Degrees(house.HotForAtRiskFromTenthsC)} °C", words, StringComparison.Ordinal);
        Assert.Contains($"Nobody grooms: from {Degrees(house.StopFromTenthsC)} °C", words, StringComparison.Ordinal);
        Assert.Contains(
            $"For dogs at risk, from {Degrees(house.StopForAtRiskFromTenthsC)} °C. Re-book.",
            words,
            StringComparison.Ordinal
        );
    }

    // The salon's own limits (common practice, no published source), as a table for a warm day.
    [Fact]
    public void The_lesson_of_a_warm_day_teaches_the_limits_that_the_rules_use()
    {
        HouseRules house = new();
        var table = Page("water-and-rest").QuerySelectorAll("tbody td").Select(cell => cell.TextContent);

        Assert.Equal(
            [
                "Hot day",
                $"from {Degrees(house.HotFromTenthsC)} °C, or a heat index of {house.HotFromIndexF} °F",
                $"from {Degrees(house.HotForAtRiskFromTenthsC)} °C",
                "Stop, re-book",
                $"from {Degrees(house.StopFromTenthsC)} °C",
                $"from {Degrees(house.StopForAtRiskFromTenthsC)} °C",
            ],
            table
        );
        Assert.Contains(
            $"never more than {house.ReadingGoodForHours} hours apart",
            Words("water-and-rest"),
            StringComparison.Ordinal
        );
    }

    // The salon's own limits (common practice, no published source).
    [Theory]
    [InlineData("flat-faced-dogs")]
    [InlineData("old-dogs-hearts-seizures")]
    public void A_lesson_about_dogs_at_risk_teaches_their_lower_limits(string module)
    {
        HouseRules house = new();

        Assert.Contains(
            $"From {Degrees(house.HotForAtRiskFromTenthsC)} °C it is a hot day",
            Words(module),
            StringComparison.Ordinal
        );
        Assert.Contains(
            $"rom {Degrees(house.StopForAtRiskFromTenthsC)} °C nobody grooms",
            Words(module),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_lesson_of_old_dogs_teaches_the_age_that_the_rules_use() =>
        Assert.Contains(
            $"elderly from {new HouseRules().ElderlyFromYears} years",
            Words("old-dogs-hearts-seizures"),
            StringComparison.Ordinal
        );

    // Scientific Reports 2020;10:9128 and the 2016 guideline of the Veterinary Committee on Trauma: cool first, transport second.
    [Fact]
    public void The_heat_lesson_cools_before_it_drives()
    {
        var parts = Library.Find("heat-stroke")!.Parts.Select(part => part.Title).ToList();

        Assert.InRange(parts.IndexOf("Cool first, drive second"), 0, parts.IndexOf("Phone while you cool, then drive") - 1);
    }

    private static string Degrees(int tenths) => (tenths / 10.0).ToString(CultureInfo.InvariantCulture);

    private static string Words(string module) =>
        string.Join(' ', Page(module).TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static IElement Page(string module) => SafePage.Body(Library.Find(module)!.Html);

    private static (string Name, double Millimetres, string Teeth)[] TaughtBlades() =>
        [
            .. Page("blades-and-scissors")
                .QuerySelectorAll("tbody tr")
                .Select(row => row.Children.Select(cell => cell.TextContent).ToArray())
                .Select(row => (row[0], double.Parse(row[1], CultureInfo.InvariantCulture), row[2])),
        ];

    private static IEnumerable<(string Name, double Inches, double Millimetres, string Teeth)> Blades() =>
        Rows(
                new
                {
                    blade = "",
                    inch = "",
                    mm = 0d,
                    teeth = "",
                },
                "blade-lengths.csv"
            )
            .Select(row => (row.blade, Fraction(row.inch), row.mm, row.teeth));

    private static double Fraction(string inch) =>
        inch.Split('/')
            .Select(part => double.Parse(part, CultureInfo.InvariantCulture))
            .Aggregate((above, below) => above / below);

    private static T[] Rows<T>(T shape, string file)
    {
        using StreamReader reader = new(Path.Combine(Data, file));
        using CsvReader csv = new(reader, CultureInfo.InvariantCulture);
        return [.. csv.GetRecords(shape)];
    }
}
