using Academy.Competence.Quizzes.Amounts;
using Academy.Competence.Quizzes.Measuring;

namespace Academy.Competence.Quizzes;

/// <summary>What has to be done to answer a question, and what is right. A closed family.</summary>
/// <remarks>
/// A drawn question holds its options, steps, pairs or spots in the order in which they are shown; a <see cref="Picked"/> answer
/// counts places in that order. So an answer tells nothing about the file, and one module, seed and kind of quiz show it again as
/// it was seen.
/// </remarks>
public abstract record QuestionKind
{
    private protected QuestionKind() { }

    /// <summary>The one answer that is right, as somebody would give it.</summary>
    public abstract Given Right { get; }

    /// <summary>The same question with everything in an order by chance; what has no order stays.</summary>
    public virtual QuestionKind Shuffled(SplitMix64 chance) => this;

    /// <summary>Whether somebody can have answered so: places that were shown, each step with a place, an amount that can be read.</summary>
    /// <remarks>An answer that was not possible is not a wrong one; whoever gave it is asked again.</remarks>
    public abstract bool CanBe(Given given);

    /// <summary>Whether this is right and whole.</summary>
    public abstract bool IsAnsweredBy(Given given);

    /// <summary>What was chosen, in words that are the same for everybody; empty where nothing is chosen from.</summary>
    public virtual Listed<string> Chosen(Given given) => [];

    /// <summary>What can be chosen, for measuring; empty where the answer is typed, put in order or matched.</summary>
    public virtual Listed<MeasuredChoice> Choices => [];

    private protected static Listed<string> Texts(Given given, Listed<string> texts) =>
        given is Picked picked && AreOf(texts.Count, picked.Places) ? picked.Places.Select(place => texts[place]).ToListed() : [];

    private protected static bool AreOf(int count, Listed<int> places) => places.All(place => place >= 0 && place < count);
}

/// <summary>One or several of the options are right, and all and only those have to be picked.</summary>
/// <param name="Options">What can be picked: at least one right and two wrong ones.</param>
public sealed record Choice(Listed<Option> Options) : QuestionKind
{
    /// <summary>Whether more than one option is right, so that all of them have to be picked.</summary>
    public bool SeveralRight => Options.Count(option => option.IsRight) > 1;

    /// <inheritdoc/>
    public override Given Right => new Picked([.. Enumerable.Range(0, Options.Count).Where(place => Options[place].IsRight)]);

    /// <inheritdoc/>
    public override QuestionKind Shuffled(SplitMix64 chance) => new Choice(chance.Shuffle(Options));

    /// <inheritdoc/>
    public override bool CanBe(Given given) => given is Picked picked && AreOf(Options.Count, picked.Places);

    /// <inheritdoc/>
    public override Listed<string> Chosen(Given given) => Texts(given, Options.Select(option => option.Text).ToListed());

    /// <inheritdoc/>
    public override Listed<MeasuredChoice> Choices =>
        Options.Select(option => new MeasuredChoice(option.Text, option.IsRight)).ToListed();

    /// <summary>Whether exactly the right options were picked, no more and no fewer, in any order.</summary>
    public override bool IsAnsweredBy(Given given) =>
        given is Picked picked && picked.Places.ToHashSet().SetEquals(((Picked)Right).Places);
}

/// <summary>One option of a question.</summary>
/// <param name="Text">The option as a person reads it.</param>
/// <param name="IsRight">Whether it belongs to the right answer.</param>
public sealed record Option(string Text, bool IsRight);

/// <summary>The words of the question are a statement, and it is true or it is not. The order is not shuffled: true comes first.</summary>
/// <param name="IsTrue">Whether it is true.</param>
public sealed record TrueOrFalse(bool IsTrue) : QuestionKind
{
    /// <summary>The place that says "true".</summary>
    public const int True = 0;

    /// <summary>The place that says "false".</summary>
    public const int False = 1;

    /// <inheritdoc/>
    public override Given Right => new Picked([IsTrue ? True : False]);

    /// <inheritdoc/>
    public override bool CanBe(Given given) => given is Picked { Places: [True or False] };

    /// <inheritdoc/>
    public override Listed<string> Chosen(Given given) => Texts(given, ["true", "false"]);

    /// <inheritdoc/>
    public override Listed<MeasuredChoice> Choices => [new("true", IsTrue), new("false", !IsTrue)];

    /// <inheritdoc/>
    public override bool IsAnsweredBy(Given given) => Right.Equals(given);
}

/// <summary>Steps that have to be put into their order. Only the whole order is right.</summary>
/// <param name="Steps">Three to six steps.</param>
public sealed record InOrder(Listed<OrderStep> Steps) : QuestionKind
{
    /// <summary>For each step as shown its place in the order, counted from 0.</summary>
    public override Given Right => new Picked([.. Steps.Select(step => step.Place)]);

    /// <summary>The steps in an order by chance that is never the right one.</summary>
    public override QuestionKind Shuffled(SplitMix64 chance)
    {
        var steps = chance.Shuffle(Steps);
        return new InOrder(
            steps.Index().All(step => step.Index == step.Item.Place) ? [.. steps.Skip(1), .. steps.Take(1)] : steps
        );
    }

    /// <summary>Whether every step has a place of its own.</summary>
    public override bool CanBe(Given given) =>
        given is Picked picked
        && picked.Places.Count == Steps.Count
        && AreOf(Steps.Count, picked.Places)
        && picked.Places.Distinct().Count() == Steps.Count;

    /// <inheritdoc/>
    public override bool IsAnsweredBy(Given given) => Right.Equals(given);
}

/// <summary>One step of an order.</summary>
/// <param name="Text">The step as a person reads it.</param>
/// <param name="Place">Its place in the right order, counted from 0.</param>
public sealed record OrderStep(string Text, int Place);

/// <summary>A number, where it has one with its unit, that may be off by a little.</summary>
/// <param name="Amount">The right amount.</param>
/// <param name="Within">How far off still counts as right, inclusive, in the unit of <paramref name="Amount"/>; 0 is exact.</param>
public sealed record Number(Amount Amount, decimal Within) : QuestionKind
{
    /// <inheritdoc/>
    public override Given Right => new Typed(Amount.ToString());

    /// <summary>The units in which it may be answered, the one of the right amount first; none for a bare number.</summary>
    public IEnumerable<Unit> Units =>
        Amount.Unit == Unit.None ? [] : Unit.Measuring(Amount.Unit.Measures).OrderBy(unit => unit == Amount.Unit ? 0 : 1);

    /// <summary>What somebody typed, or what keeps it from being an amount of the kind asked for.</summary>
    public ReadAmount Read(string typed) => ReadAmount.Of(typed, Amount.Unit.Measures);

    /// <inheritdoc/>
    public override bool CanBe(Given given) => given is Typed typed && Read(typed.Text) is ReadAmount.Whole;

    /// <inheritdoc/>
    public override bool IsAnsweredBy(Given given) =>
        given is Typed typed && Read(typed.Text) is ReadAmount.Whole(var amount) && amount.IsWithin(Within, of: Amount);
}

/// <summary>Pairs that belong together. Only all of them together are right.</summary>
/// <param name="Pairs">Three to six pairs.</param>
/// <param name="Sides">All right-hand sides that can be chosen for a left one: those of the pairs and up to two that fit none.</param>
public sealed record Matching(Listed<Pair> Pairs, Listed<string> Sides) : QuestionKind
{
    /// <summary>For each left side as shown the place of its right-hand side among <see cref="Sides"/>, counted from 0.</summary>
    public override Given Right =>
        new Picked([.. Pairs.Select(pair => Sides.Index().First(side => side.Item == pair.Right).Index)]);

    /// <summary>Both sides in an order by chance, never each right-hand side beside its left one.</summary>
    public override QuestionKind Shuffled(SplitMix64 chance)
    {
        var (pairs, sides) = (chance.Shuffle(Pairs), chance.Shuffle(Sides));
        var isTold = pairs.Select(pair => pair.Right).SequenceEqual(sides.Take(pairs.Count));
        return new Matching(pairs, isTold ? [.. sides.Skip(1), .. sides.Take(1)] : sides);
    }

    /// <summary>Whether every left side has a right-hand one; two may have the same.</summary>
    public override bool CanBe(Given given) =>
        given is Picked picked && picked.Places.Count == Pairs.Count && AreOf(Sides.Count, picked.Places);

    /// <inheritdoc/>
    public override bool IsAnsweredBy(Given given) => Right.Equals(given);
}

/// <summary>Two things that belong together.</summary>
/// <param name="Left">What a right-hand side is chosen for.</param>
/// <param name="Right">What belongs to it; no two pairs share one.</param>
public sealed record Pair(string Left, string Right);

/// <summary>One of the places marked on a picture is right.</summary>
/// <param name="Picture">The picture's file name in the module's folder.</param>
/// <param name="Spots">One right place and two to five wrong ones.</param>
public sealed record OnPicture(string Picture, Listed<Spot> Spots) : QuestionKind
{
    /// <inheritdoc/>
    public override Given Right => new Picked([.. Enumerable.Range(0, Spots.Count).Where(place => Spots[place].IsRight)]);

    /// <inheritdoc/>
    public override QuestionKind Shuffled(SplitMix64 chance) => this with { Spots = chance.Shuffle(Spots) };

    /// <inheritdoc/>
    public override bool CanBe(Given given) => given is Picked { Places.Count: 1 } picked && AreOf(Spots.Count, picked.Places);

    /// <inheritdoc/>
    public override Listed<string> Chosen(Given given) => Texts(given, Spots.Select(spot => spot.Words).ToListed());

    /// <inheritdoc/>
    public override Listed<MeasuredChoice> Choices =>
        Spots.Select(spot => new MeasuredChoice(spot.Words, spot.IsRight)).ToListed();

    /// <inheritdoc/>
    public override bool IsAnsweredBy(Given given) => Right.Equals(given);
}

/// <summary>One place on a picture.</summary>
/// <param name="X">From the left, in the picture's own units.</param>
/// <param name="Y">From the top, in the same units.</param>
/// <param name="Words">Where it is, for those who cannot see it, without giving away what is right.</param>
/// <param name="IsRight">Whether it is the one asked for.</param>
public sealed record Spot(decimal X, decimal Y, string Words, bool IsRight);
