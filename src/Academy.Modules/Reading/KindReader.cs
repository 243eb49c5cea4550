using System.Globalization;
using System.Text.RegularExpressions;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Amounts;

namespace Academy.Modules.Reading;

/// <summary>Reads what has to be done to answer a question from the lines below its words.</summary>
internal sealed partial class KindReader(int questionLine, IReadOnlyList<QuestionPart> parts, Findings findings)
{
    private const int Fewest = 3;
    private const int Most = 6;
    private const int MostSpares = 2;

    // Whatever is found is broken, so nobody is ever asked this.
    private static readonly QuestionKind Unreadable = new TrueOrFalse(IsTrue: true);

    public QuestionKind Read()
    {
        string[] ways = [.. parts.Select(WayOf).Distinct(StringComparer.Ordinal)];
        if (ways.Length > 1)
            return Broken(questionLine, $"The question asks in several ways: {string.Join(", ", ways)}. Choose one.");
        return parts.FirstOrDefault(part => part.Name is not ("Right" or "Wrong") || part.At.Length > 0) switch
        {
            null => Choice(),
            { Name: "Answer" } => Answer([.. Named("Answer")]),
            { Name: QuestionPart.Step } => InOrder([.. Named(QuestionPart.Step)]),
            { Name: "Pair" or "Spare" } => Matching([.. Named("Pair")], [.. Named("Spare")]),
            _ => OnPicture([.. Named("Picture")], [.. parts.Where(part => part.Name is "Right" or "Wrong")]),
        };
    }

    private static string WayOf(QuestionPart part) =>
        part switch
        {
            { Name: "Picture" } or { Name: "Right" or "Wrong", At.Length: > 0 } => "a picture and places on it",
            { Name: "Right" or "Wrong" } => "options",
            { Name: "Pair" or "Spare" } => "pairs",
            { Name: QuestionPart.Step } => "steps with numbers",
            _ => "an answer",
        };

    private IEnumerable<QuestionPart> Named(string name) => parts.Where(part => part.Name == name);

    private QuestionKind Broken(int line, string message)
    {
        findings.Broken(line, message);
        return Unreadable;
    }

    private Choice Choice()
    {
        Choice choice = new([.. parts.Select(part => new Option(part.Words, part.Name == "Right"))]);
        var wrong = choice.Options.Count(option => !option.IsRight);
        if (wrong == choice.Options.Count)
            findings.Broken(questionLine, "No option is right. Write at least one \"- Right: \".");
        if (wrong < 2)
            findings.Broken(questionLine, $"There are {wrong} wrong options; write at least 2.");
        CheckWords(
            [.. choice.Options.Select(option => option.Text)],
            "An option has no words.",
            "Two options have the same words."
        );
        return choice;
    }

    private QuestionKind Answer(QuestionPart[] answers) =>
        answers switch
        {
            [_, var second, ..] => Broken(second.Line, "There are two answers. Write one line \"Answer: \"."),
            [{ Words: "true" }] => new TrueOrFalse(IsTrue: true),
            [{ Words: "false" }] => new TrueOrFalse(IsTrue: false),
            [var only] => Number(only),
            [] => Unreadable,
        };

    private QuestionKind Number(QuestionPart answer)
    {
        var written = NumberAnswer().Match(answer.Words);
        if (!written.Success)
            return Broken(
                answer.Line,
                "An answer is \"true\", \"false\", or a number and how far off still counts: \"Answer: 3.2 mm, within 0.2 mm\"."
            );
        if (ReadAmount.OfAnything(written.Groups["amount"].Value) is not { } amount)
            return Broken(
                answer.Line,
                $"\"{written.Groups["amount"].Value}\" cannot be read. Write a number and mm, cm, in, °C, °F, kg, g, lb, ml, l, s, min, h, days, % or nothing."
            );
        if (ReadAmount.OfAnything(written.Groups["within"].Value) is not { Value: >= 0 } within)
            return Broken(
                answer.Line,
                $"\"within {written.Groups["within"].Value}\" cannot be read. Write a number of 0 or more."
            );
        if (within.Unit != Unit.None && within.Unit != amount.Unit)
            return Broken(answer.Line, "Write how far off still counts in the unit of the answer.");
        return new Number(amount, within.Value);
    }

    private InOrder InOrder(QuestionPart[] steps)
    {
        CheckCount(steps.Length, "steps");
        foreach (var (index, step) in steps.Index().Where(step => step.Item.At != Written(step.Index + 1)).Take(1))
            findings.Broken(step.Line, $"This step is the number {index + 1}. Number the steps 1, 2, 3 in the right order.");
        CheckWords([.. steps.Select(step => step.Words)], "A step has no words.", "Two steps have the same words.");
        return new InOrder([.. steps.Select((step, place) => new OrderStep(step.Words, place))]);
    }

    private Matching Matching(QuestionPart[] pairs, QuestionPart[] spares)
    {
        CheckCount(pairs.Length, "pairs");
        if (spares.Length > MostSpares)
            findings.Broken(
                spares[MostSpares].Line,
                $"There are {spares.Length} lines \"- Spare: \"; {MostSpares} are the most."
            );
        foreach (var pair in pairs.Where(pair => Sides(pair).Length != 2))
            findings.Broken(
                pair.Line,
                "A pair has an equals sign with spaces between its two sides, once: \"- Pair: No. 10 = 1.5 mm\"."
            );
        Pair[] whole = [.. pairs.Select(Sides).Where(sides => sides.Length == 2).Select(sides => new Pair(sides[0], sides[1]))];
        string[] rights = [.. whole.Select(pair => pair.Right), .. spares.Select(spare => spare.Words)];
        CheckWords([.. whole.Select(pair => pair.Left)], "A side of a pair has no words.", "Two pairs have the same left side.");
        CheckWords(rights, "A side of a pair has no words.", "Two right-hand sides are the same. Each fits one left side only.");
        return new Matching([.. whole], [.. rights]);
    }

    private static string[] Sides(QuestionPart pair) => $"{pair.Words} ".Split(" = ", StringSplitOptions.TrimEntries);

    private QuestionKind OnPicture(QuestionPart[] pictures, QuestionPart[] spots)
    {
        if (pictures is not [var picture])
            return Broken(questionLine, "A question on a picture has one line \"Picture: \" and the name of the file.");
        var (right, wrong) = (spots.Count(spot => spot.Name == "Right"), spots.Count(spot => spot.Name == "Wrong"));
        if (right != 1 || wrong is < 2 or > 5)
            findings.Broken(
                picture.Line,
                $"There are {right} right and {wrong} wrong places; write one \"- Right at x,y: \" and two to five \"- Wrong at x,y: \"."
            );
        CheckWords([.. spots.Select(spot => spot.Words)], "A place has no words.", "Two places have the same words.");
        return new OnPicture(picture.Words, [.. spots.Select(SpotOf)]);
    }

    private Spot SpotOf(QuestionPart part)
    {
        var at = Place().Match(part.At);
        if (!at.Success)
            findings.Broken(part.Line, $"The place \"{part.At}\" is not two numbers of the picture's own units, such as 120,80.");
        return at.Success
            ? new(Units(at, "x"), Units(at, "y"), part.Words, part.Name == "Right")
            : new(0, 0, part.Words, IsRight: false);
    }

    private static decimal Units(Match place, string axis) =>
        decimal.Parse(place.Groups[axis].ValueSpan, CultureInfo.InvariantCulture);

    private static string Written(int number) => number.ToString(CultureInfo.InvariantCulture);

    private void CheckCount(int count, string what)
    {
        if (count is < Fewest or > Most)
            findings.Broken(questionLine, $"There are {count} {what}; write {Fewest} to {Most}.");
    }

    private void CheckWords(string[] words, string empty, string twice)
    {
        if (words.Contains(""))
            findings.Broken(questionLine, empty);
        if (words.Distinct(StringComparer.OrdinalIgnoreCase).Count() < words.Length)
            findings.Broken(questionLine, twice);
    }

    [GeneratedRegex(@"^(?<amount>.+),\s*within\s+(?<within>.+)$", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex NumberAnswer();

    [GeneratedRegex(
        @"^(?<x>-?[0-9]{1,5}(\.[0-9]{1,3})?)\s*,\s*(?<y>-?[0-9]{1,5}(\.[0-9]{1,3})?)$",
        RegexOptions.ExplicitCapture,
        Patience.Milliseconds
    )]
    private static partial Regex Place();
}
