using System.Text.Json;
using Academy.Competence.Quizzes.Measuring;

namespace Academy.Competence.Tests.Quizzes.Measuring;

/// <summary>The two published sets of answers, and what R's psych 2.2.9 says of them (data/competence/kr20.json).</summary>
internal sealed record PublishedSheets(IReadOnlyList<AnswerSheet> Sheets, JsonElement Results)
{
    /// <summary>10 students, 10 questions: Wuensch, East Carolina University, core.ecu.edu/wuenschk/StatHelp/KR20.txt.</summary>
    public static PublishedSheets Wuensch { get; } =
        Read("wuensch", set => set.GetProperty("data").EnumerateArray().Select(row => row.GetString()!));

    /// <summary>1,000 people, 5 questions: section 6 of a law school test (Bock and Lieberman 1970), as shipped with psych.</summary>
    public static PublishedSheets Lsat6 { get; } =
        Read(
            "lsat6",
            set =>
                set.GetProperty("patterns")
                    .EnumerateArray()
                    .SelectMany(row =>
                        Enumerable.Repeat(row.GetProperty("pattern").GetString()!, row.GetProperty("count").GetInt32())
                    )
        );

    public JsonElement[] Items => [.. Results.GetProperty("item").EnumerateArray()];

    public double Figure(string name) => Results.GetProperty(name).GetDouble();

    public static string QuestionAt(int place) => $"q-{place + 1}";

    public static AnswerSheet SheetOf(string marks) =>
        new(marks.Select((mark, place) => new MarkedAnswer(QuestionAt(place), mark == '1', [])).ToListed());

    public static JsonElement File(string name) =>
        JsonDocument
            .Parse(System.IO.File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "competence", name)))
            .RootElement;

    private static PublishedSheets Read(string name, Func<JsonElement, IEnumerable<string>> rows)
    {
        var set = File("kr20.json").GetProperty(name);
        return new([.. rows(set).Select(SheetOf)], set.GetProperty("results"));
    }
}
