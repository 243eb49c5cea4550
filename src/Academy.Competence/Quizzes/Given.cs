using System.Globalization;

namespace Academy.Competence.Quizzes;

/// <summary>What somebody gave as an answer, in the form in which it is kept. A closed family.</summary>
public abstract record Given
{
    private protected Given() { }

    /// <summary>Whether nothing was given.</summary>
    public abstract bool IsEmpty { get; }

    /// <summary>As an attempt keeps it: places with commas between, or an equals sign and what was typed.</summary>
    public abstract string Written { get; }

    /// <summary>What an attempt keeps so.</summary>
    public static Given Read(string written) =>
        written.StartsWith(Typed.Sign)
            ? new Typed(written[1..])
            : new Picked(
                written
                    .Split(',', StringSplitOptions.RemoveEmptyEntries)
                    .Select(place => int.Parse(place, CultureInfo.InvariantCulture))
                    .ToListed()
            );
}

/// <summary>Places, counted from 0 in the order in which the draw showed them.</summary>
/// <param name="Places">
/// Of a choice, of true or false and of a picture: the places picked. Of an order: for each step as shown the place that it was
/// given. Of pairs: for each left side as shown the place of the right-hand side chosen for it.
/// </param>
public sealed record Picked(Listed<int> Places) : Given
{
    /// <inheritdoc/>
    public override bool IsEmpty => Places.IsEmpty;

    /// <inheritdoc/>
    public override string Written => string.Join(',', Places.Select(place => place.ToString(CultureInfo.InvariantCulture)));
}

/// <summary>A number and its unit as they were typed.</summary>
/// <param name="Text">To the letter: what it is worth is read again whenever it is marked.</param>
public sealed record Typed(string Text) : Given
{
    internal const char Sign = '=';

    /// <inheritdoc/>
    public override bool IsEmpty => string.IsNullOrWhiteSpace(Text);

    /// <inheritdoc/>
    public override string Written => Sign + Text;
}
