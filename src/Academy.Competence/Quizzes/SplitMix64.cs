namespace Academy.Competence.Quizzes;

/// <summary>A small generator of chance that gives the same numbers for the same seed on every machine, for ever.</summary>
/// <remarks>
/// A quiz has to be drawn again, years later, exactly as it was asked, so its chance may not depend on a library that could change
/// it. SplitMix64: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014, doi 10.1145/2660193.2660195.
/// It is not for secrets.
/// </remarks>
public sealed class SplitMix64(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 even bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            var mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }

    /// <summary>A whole number from 0 up to, not including, <paramref name="limit"/>.</summary>
    /// <remarks>The high half of a 128-bit product: uneven by less than one part in 2^32, whatever the limit.</remarks>
    public int Below(int limit) => (int)Math.BigMul(Next(), (ulong)limit, out _);

    /// <summary>The same things in an order by chance, every order equally likely (Fisher and Yates).</summary>
    public Listed<T> Shuffle<T>(IEnumerable<T> items)
    {
        var cards = items.ToArray();
        for (var last = cards.Length - 1; last > 0; last--)
        {
            var other = Below(last + 1);
            (cards[last], cards[other]) = (cards[other], cards[last]);
        }
        return [.. cards];
    }
}
