using Academy.Competence.Quizzes;

namespace Academy.Competence.Tests.Quizzes;

public class SplitMix64Tests
{
    // Values that implementations in other languages agree on: Rosetta Code, "Pseudo-random numbers/Splitmix64", seed 1234567.
    [Fact]
    public void The_generator_gives_the_published_numbers() =>
        Assert.Equal(
            [6457827717110365317UL, 3203168211198807973UL, 9817491932198370423UL, 4593380528125082431UL, 16408922859458223821UL],
            Numbers(seed: 1234567, count: 5)
        );

    // Seed 0, first three outputs of the authors' reference program in C, as restated in many test suites.
    [Fact]
    public void A_seed_of_nothing_gives_chance_all_the_same() =>
        Assert.Equal([0xE220A8397B1DCDAFUL, 0x6E789E6AA1B965F4UL, 0x06C45D188009454FUL], Numbers(seed: 0, count: 3));

    // Chi-squared with 23 degrees of freedom exceeds 49.7 once in 1000 (any statistics table); the seed is fixed.
    [Fact]
    public void Every_order_of_four_cards_is_as_likely_as_another()
    {
        var chance = new SplitMix64(7);
        var orders = Enumerable.Range(0, 24_000).CountBy(_ => string.Concat(chance.Shuffle("abcd"))).ToDictionary();

        Assert.Equal(24, orders.Count);
        Assert.InRange(orders.Values.Sum(seen => Math.Pow(seen - 1000, 2) / 1000), 0, 49.7);
    }

    [Fact]
    public void Shuffling_loses_nothing_and_invents_nothing() =>
        Assert.Equal([1, 2, 3, 4, 5], new SplitMix64(3).Shuffle([5, 4, 3, 2, 1]).Order());

    private static ulong[] Numbers(ulong seed, int count)
    {
        var chance = new SplitMix64(seed);
        return [.. Enumerable.Range(0, count).Select(_ => chance.Next())];
    }
}
