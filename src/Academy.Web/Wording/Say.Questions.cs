using System.Diagnostics;
using System.Globalization;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Amounts;

namespace Academy.Web.Wording;

// Kinds of questions: what has to be done, how it is marked, what was answered.
public static partial class Say
{
    /// <summary>What has to be done and how it is marked, said before it is answered.</summary>
    public static string HowMarked(QuestionKind kind) =>
        kind switch
        {
            Choice { SeveralRight: true } => "Several answers are right. All of them together count, and none besides.",
            Choice => "One answer is right.",
            TrueOrFalse => "Say whether this is true or false.",
            InOrder => "Give each step its place. Only the whole order counts as right.",
            Number number => $"{What(number)} {HowNear(number)}",
            Matching match when match.Sides.Count > match.Pairs.Count =>
                "Choose what belongs to each. Some choices fit none. Only all pairs together count as right.",
            Matching => "Choose what belongs to each. Only all pairs together count as right.",
            OnPicture => "One of the places marked with letters is right.",
            _ => throw new UnreachableException($"No words for {kind}."),
        };

    /// <summary>"Write a number and mm, cm or in." or that it stands alone.</summary>
    public static string What(Number number) =>
        number.Amount.Unit == Unit.None
            ? "Write a number without a unit."
            : $"Write a number and {Counts.Or([.. Unit.Measuring(number.Amount.Unit.Measures).Select(unit => unit.Sign)])}.";

    /// <summary>What is wrong with an amount that was typed, and what to write; null where nothing is.</summary>
    public static string? Problem(Number number, ReadAmount read) =>
        read switch
        {
            ReadAmount.Whole => null,
            ReadAmount.NoNumber => $"That cannot be read as a number. {What(number)}",
            ReadAmount.NoUnit => $"The unit is missing. {What(number)}",
            ReadAmount.OtherUnit(var unit) => $"“{unit}” does not fit here. {What(number)}",
            _ => throw new UnreachableException($"No words for {read}."),
        };

    /// <summary>Each part of what was answered in words, in the order of the page; empty where nothing was.</summary>
    public static IReadOnlyList<string> Answer(QuestionKind kind, Given given) =>
        (kind, given) switch
        {
            (Number, Typed { IsEmpty: false } typed) => [typed.Text],
            (InOrder order, Picked picked) when kind.CanBe(picked) =>
            [
                .. order
                    .Steps.Zip(picked.Places)
                    .OrderBy(step => step.Second)
                    .Select(step => string.Create(CultureInfo.InvariantCulture, $"{step.Second + 1}. {step.First.Text}")),
            ],
            (Matching match, Picked picked) when kind.CanBe(picked) =>
            [
                .. match.Pairs.Zip(picked.Places, (pair, place) => $"{pair.Left}: {match.Sides[place]}"),
            ],
            (Choice choice, Picked picked) => Picks(picked, choice.Options.Select(option => option.Text)),
            (TrueOrFalse, Picked picked) => Picks(picked, Truths),
            (OnPicture picture, Picked picked) => Picks(picked, picture.Spots.Select((spot, place) => Spot(spot, place))),
            _ => [],
        };

    /// <summary>What is right, in words as <see cref="Answer"/> has them.</summary>
    public static IReadOnlyList<string> RightAnswer(QuestionKind kind) =>
        kind is Number { Within: > 0 } number ? [$"{number.Amount}, or up to {Off(number)} off"] : Answer(kind, kind.Right);

    /// <summary>The words of true or false, in the order of their places.</summary>
    public static IReadOnlyList<string> Truths { get; } = ["True", "False"];

    /// <summary>"1st", "2nd", "3rd", "4th" and on to "6th", the most that an order has.</summary>
    public static string Ordinal(int number) =>
        number switch
        {
            1 => "1st",
            2 => "2nd",
            3 => "3rd",
            _ => string.Create(CultureInfo.InvariantCulture, $"{number}th"),
        };

    /// <summary>A mean or an error to one decimal: "16.4".</summary>
    public static string Tenths(double number) => number.ToString("0.0", SalonTime.Culture);

    /// <summary>The letter of a place on a picture.</summary>
    public static char Letter(int place) => (char)('A' + place);

    private static string Spot(Spot spot, int place) => $"{Letter(place)}: {spot.Words}";

    private static string[] Picks(Picked picked, IEnumerable<string> words)
    {
        string[] all = [.. words];
        return [.. picked.Places.Where(place => place >= 0 && place < all.Length).Select(place => all[place])];
    }

    private static string HowNear(Number number) =>
        number.Within > 0 ? $"Up to {Off(number)} off counts as right." : "Only the exact number counts as right.";

    private static string Off(Number number) => new Amount(number.Within, number.Amount.Unit).ToString();
}
