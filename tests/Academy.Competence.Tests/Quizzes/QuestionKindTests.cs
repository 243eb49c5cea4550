using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Amounts;
using CsCheck;

namespace Academy.Competence.Tests.Quizzes;

/// <summary>Every kind of question: what answers it, what is not an answer, and that chance only changes the order.</summary>
public class QuestionKindTests
{
    private static readonly Number Toe = new(new(3.2m, Unit.Find("mm")!), Within: 0.2m);

    private static readonly QuestionKind[] All =
    [
        new Choice([new("Stop", true), new("Finish", false), new("Wait", false)]),
        new Choice([new("Stop", true), new("Cool", true), new("Finish", false), new("Wait", false)]),
        new TrueOrFalse(IsTrue: true),
        new TrueOrFalse(IsTrue: false),
        new InOrder([new("Bath", 0), new("Towel", 1), new("Dryer", 2)]),
        new InOrder([.. Enumerable.Range(0, 6).Select(place => new OrderStep($"step {place}", place))]),
        Toe,
        new Matching([new("10", "1.5 mm"), new("7", "3.2 mm"), new("5", "6.3 mm")], ["1.5 mm", "3.2 mm", "6.3 mm", "9 mm"]),
        new Matching([new("a", "1"), new("b", "2"), new("c", "3")], ["1", "2", "3"]),
        new OnPicture("dog.svg", [new(1, 2, "ear", false), new(3, 4, "belly", true), new(5, 6, "tail", false)]),
    ];

    public static TheoryData<int> Kinds => [.. Enumerable.Range(0, All.Length)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_right_answer_is_right_in_whatever_order_it_is_shown(int kind) =>
        Gen.ULong.Sample(seed =>
        {
            var shown = All[kind].Shuffled(new(seed));
            return shown.IsAnsweredBy(shown.Right) && shown.CanBe(shown.Right);
        });

    [Theory]
    [MemberData(nameof(Kinds))]
    public void One_seed_always_shows_the_same_order(int kind) =>
        Gen.ULong.Sample(seed => All[kind].Shuffled(new(seed)).Equals(All[kind].Shuffled(new(seed))));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Nothing_at_all_is_wrong_and_no_answer(int kind)
    {
        Assert.False(All[kind].IsAnsweredBy(new Picked([])));
        Assert.False(All[kind].IsAnsweredBy(new Typed("")));
        Assert.False(All[kind].CanBe(new Typed(" ")));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void An_answer_to_another_kind_of_question_is_wrong_and_gives_nothing_up(int kind) =>
        Gen.OneOf(
                Gen.Int[-3, 9].Array[0, 8].Select(Given (places) => new Picked([.. places])),
                Gen.String[0, 60].Select(Given (text) => new Typed(text))
            )
            .Sample(given => !All[kind].IsAnsweredBy(given) || given == All[kind].Right || Means(All[kind], given));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_is_kept_is_read_back_as_it_was_given(int kind)
    {
        Answer answer = new("blades-07", All[kind].Right);

        Assert.Equal(answer, Answer.Read(answer.Written));
    }

    [Theory]
    [InlineData("heat-01:0,2", "0 2")] // as attempts have kept picked places from the first day on
    [InlineData("heat-01:1", "1")]
    [InlineData("heat-01:", "")]
    public void Places_kept_by_an_old_attempt_are_still_read(string written, string places)
    {
        var read = Answer.Read(written);

        Assert.Equal(("heat-01", new Picked([.. Places(places)])), (read.QuestionId, read.Given));
        Assert.Equal(written, read.Written);
    }

    [Theory]
    [InlineData("blades-07:=1/8 in", "1/8 in")]
    [InlineData("blades-07:=3:2, or = 3", "3:2, or = 3")] // whatever was typed, with the signs that the form itself uses
    [InlineData("blades-07:=", "")]
    public void What_was_typed_is_read_to_the_letter(string written, string text) =>
        Assert.Equal(new Answer("blades-07", new Typed(text)), Answer.Read(written));

    [Theory]
    [InlineData("0", true)]
    [InlineData("1", false)]
    public void A_true_statement_is_true(string picked, bool right) =>
        Assert.Equal(right, new TrueOrFalse(IsTrue: true).IsAnsweredBy(new Picked([.. Places(picked)])));

    // three steps in the order of the file; a place for each
    [Theory]
    [InlineData("0 1 2", true, true)]
    [InlineData("0 2 1", false, true)] // two swapped: nothing of it counts
    [InlineData("1 2 0", false, true)]
    [InlineData("0 0 2", false, false)] // two share a place
    [InlineData("0 1", false, false)] // one has none
    [InlineData("0 1 3", false, false)]
    [InlineData("-1 0 1", false, false)]
    public void Only_the_whole_order_is_right(string places, bool right, bool possible)
    {
        InOrder order = new([new("Bath", 0), new("Towel", 1), new("Dryer", 2)]);
        Picked given = new([.. Places(places)]);

        Assert.Equal((right, possible), (order.IsAnsweredBy(given), order.CanBe(given)));
    }

    // the places of "1.5 mm", "3.2 mm", "6.3 mm" and the spare "9 mm"
    [Theory]
    [InlineData("0 1 2", true, true)]
    [InlineData("0 2 1", false, true)]
    [InlineData("0 1 3", false, true)] // one has the spare
    [InlineData("0 0 2", false, true)] // two have the same: possible, and wrong
    [InlineData("0 1", false, false)]
    [InlineData("0 1 4", false, false)]
    public void Only_all_pairs_together_are_right(string places, bool right, bool possible)
    {
        Picked given = new([.. Places(places)]);

        Assert.Equal((right, possible), (All[7].IsAnsweredBy(given), All[7].CanBe(given)));
    }

    [Theory]
    [InlineData("1", true, true)]
    [InlineData("0", false, true)]
    [InlineData("0 1", false, false)] // there is one place to pick
    [InlineData("3", false, false)]
    public void One_place_on_a_picture_is_right(string places, bool right, bool possible)
    {
        Picked given = new([.. Places(places)]);

        Assert.Equal((right, possible), (All[9].IsAnsweredBy(given), All[9].CanBe(given)));
    }

    [Theory]
    [InlineData("3.2 mm", true)]
    [InlineData("3 mm", true)] // as far off as may be
    [InlineData("3,4mm", true)]
    [InlineData("0.32 cm", true)]
    [InlineData("1/8 in", true)] // 3.175 mm
    [InlineData("2.99 mm", false)]
    [InlineData("3.41 mm", false)]
    [InlineData("3.2 cm", false)]
    [InlineData("3.2", false)]
    [InlineData("3.2 kg", false)]
    public void A_number_may_be_off_by_as_much_as_the_author_says(string typed, bool right) =>
        Assert.Equal(right, Toe.IsAnsweredBy(new Typed(typed)));

    [Theory]
    [InlineData("3.2 mm", true)]
    [InlineData("99 in", true)] // wrong, and an answer
    [InlineData("3.2", false)]
    [InlineData("three mm", false)]
    [InlineData("3.2 kg", false)]
    public void What_cannot_be_read_is_no_answer(string typed, bool possible) =>
        Assert.Equal(possible, Toe.CanBe(new Typed(typed)));

    [Fact]
    public void An_order_is_never_shown_in_its_own_order() =>
        Gen.Select(Gen.ULong, Gen.Int[3, 6])
            .Sample(
                (seed, count) =>
                {
                    InOrder order = new([.. Enumerable.Range(0, count).Select(place => new OrderStep($"{place}", place))]);
                    var shown = (InOrder)order.Shuffled(new(seed));
                    return shown != order && shown.Steps.ToHashSet().SetEquals(order.Steps);
                }
            );

    [Fact]
    public void Pairs_are_never_shown_side_by_side_as_they_belong() =>
        Gen.ULong.Sample(seed =>
        {
            var shown = (Matching)All[8].Shuffled(new(seed));
            return !shown.Pairs.Select(pair => pair.Right).SequenceEqual(shown.Sides)
                && shown.Sides.ToHashSet().SetEquals(((Matching)All[8]).Sides);
        });

    // A draw made before there were other kinds has to be drawn again as it was: a choice takes the same chance from the same seed.
    [Fact]
    public void A_choice_is_shuffled_as_it_always_was() =>
        Gen.ULong.Sample(seed =>
        {
            var choice = (Choice)All[1];
            return ((Choice)choice.Shuffled(new(seed))).Options == new SplitMix64(seed).Shuffle(choice.Options);
        });

    // Another way of giving what is right: picks in another order, the same amount otherwise written.
    private static bool Means(QuestionKind kind, Given given) =>
        (kind, given) switch
        {
            (Choice, Picked picked) => picked.Places.ToHashSet().SetEquals(((Picked)kind.Right).Places),
            (Number number, Typed typed) => number.Read(typed.Text) is ReadAmount.Whole,
            _ => false,
        };

    private static IEnumerable<int> Places(string words) =>
        words
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(word => int.Parse(word, System.Globalization.CultureInfo.InvariantCulture));
}
