namespace Academy.Modules.Reading;

/// <summary>One line of a question, with the lines that go on with it: what it begins with and its words.</summary>
internal sealed record QuestionPart(int Line, string Name, string Words, string At = "")
{
    public const string Step = "1.";

    public QuestionPart With(string words) => this with { Words = $"{Words} {words}".Trim() };
}
