using System.Globalization;
using Academy.Competence.Quizzes;
using Academy.Web.Wording;

namespace Academy.Web.Features.Quizzes;

/// <summary>An answer as a form holds it.</summary>
/// <param name="Picked">Places picked, of a choice, of true or false, of a picture.</param>
/// <param name="Placed">The place chosen in each row, of an order and of pairs; empty where none was.</param>
/// <param name="Typed">A number and its unit.</param>
public sealed record AnswerForm(IReadOnlyList<int> Picked, IReadOnlyList<string?> Placed, string? Typed)
{
    /// <summary>A form that shows what was answered before, with a row for each step or pair.</summary>
    public static AnswerForm Of(QuestionKind kind, Given? given)
    {
        var places = (given as Picked)?.Places ?? [];
        return RowsOf(kind) is { Count: > 0 } rows
            ? new([], [.. rows.Select((_, row) => row < places.Count ? Written(places[row]) : null)], null)
            : new([.. places], [], (given as Typed)?.Text);
    }

    /// <summary>What stands at the head of each row that asks for a place; none for kinds without rows.</summary>
    public static IReadOnlyList<string> RowsOf(QuestionKind kind) =>
        kind switch
        {
            InOrder order => [.. order.Steps.Select(step => step.Text)],
            Matching match => [.. match.Pairs.Select(pair => pair.Left)],
            _ => [],
        };

    public static string Written(int place) => place.ToString(CultureInfo.InvariantCulture);

    /// <summary>The same form with a row for each step or pair, whatever was sent.</summary>
    public AnswerForm Whole(QuestionKind kind) => this with { Placed = [.. RowsOf(kind).Select((_, row) => At(row))] };

    /// <summary>The answer, where there are no problems.</summary>
    public Given Given(QuestionKind kind) =>
        kind switch
        {
            Number => new Typed(Typed?.Trim() ?? ""),
            InOrder or Matching => new Picked([.. Whole(kind).Placed.Select(Place).OfType<int>()]),
            _ => new Picked([.. Picked.Order()]),
        };

    /// <summary>What keeps it from being an answer: the field, and what to do. An empty form is none, and has no problems.</summary>
    public IEnumerable<(string Field, string Words)> Problems(QuestionKind kind) =>
        kind switch
        {
            _ when Given(kind).IsEmpty && Placed.All(string.IsNullOrEmpty) => [],
            Number number => Say.Problem(number, number.Read(Given(kind) is Typed typed ? typed.Text : "")) is { } words
                ? [(nameof(Typed), words)]
                : [],
            InOrder order => Unplaced(order, order.Steps.Count).Concat(Shared(order)),
            Matching match => Unplaced(match, match.Sides.Count),
            _ => kind.CanBe(Given(kind)) ? [] : [(nameof(Picked), "Your answer: choose among the answers below")],
        };

    private IEnumerable<(string, string)> Unplaced(QuestionKind kind, int choices) =>
        RowsOf(kind)
            .Select((row, at) => (row, at))
            .Where(one => Place(At(one.at)) is not { } place || place < 0 || place >= choices)
            .Select(one => (Field(one.at), $"“{one.row}” is still open: choose for each, or for none"));

    private IEnumerable<(string, string)> Shared(InOrder order) =>
        order
            .Steps.Select((step, at) => (step.Text, At: at, Place: Place(At(at))))
            .Where(one => one.Place is not null)
            .GroupBy(one => one.Place)
            .SelectMany(
                same => same.Skip(1),
                (same, one) =>
                    (Field(one.At), $"“{one.Text}” shares the {Say.Ordinal(same.Key!.Value + 1)} place: give each its own")
            );

    private string? At(int row) => row < Placed.Count ? Placed[row] : null;

    private static int? Place(string? chosen) =>
        int.TryParse(chosen, NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : null;

    private static string Field(int row) => $"{nameof(Placed)}[{Written(row)}]";
}
