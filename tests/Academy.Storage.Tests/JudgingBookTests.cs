using Academy.Competence;

namespace Academy.Storage.Tests;

public sealed class JudgingBookTests
{
    private static readonly ModuleName Towels = new("towels");
    private static readonly Dictionary<string, int> Nothing = [];

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_said_of_each_question_comes_back_and_the_later_word_counts()
    {
        using var salon = await TestSalon.OpenAsync();

        await KeepAsync(salon, "first", ("dry-01", 70), Nothing);
        await KeepAsync(salon, "first", ("dry-02", 0), Nothing);
        await KeepAsync(salon, "first", ("dry-01", 100), Nothing);

        Assert.Equal(["dry-01 100", "dry-02 0"], await FindAsync(salon, "first"));
        var all = await InBook(salon, book => book.AllAsync(TestSalon.Salon, TestSalon.Ina, Stop));
        Assert.Equal([KeyValuePair.Create(Towels, ("first", 2))], all);
    }

    [Fact]
    public async Task Another_edition_starts_anew_and_a_further_round_from_what_was_given()
    {
        using var salon = await TestSalon.OpenAsync();
        await KeepAsync(salon, "first", ("dry-01", 70), Nothing);

        await KeepAsync(salon, "second", ("dry-02", 50), new Dictionary<string, int> { ["dry-01"] = 10, ["dry-02"] = 20 });

        Assert.Empty(await FindAsync(salon, "first"));
        Assert.Equal(["dry-01 10", "dry-02 50"], await FindAsync(salon, "second"));
    }

    [Fact]
    public async Task Nobody_else_and_no_other_salon_finds_it_and_given_it_is_let_go()
    {
        using var salon = await TestSalon.OpenAsync();
        await KeepAsync(salon, "first", ("dry-01", 70), Nothing);

        Assert.Empty(await InBook(salon, book => book.AllAsync(TestSalon.Salon, TestSalon.Pim, Stop)));
        Assert.Empty(await InBook(salon, book => book.AllAsync(new SalonId(TestSalon.Id(900)), TestSalon.Ina, Stop)));
        await InBook(
            salon,
            async book =>
            {
                await book.EndAsync(TestSalon.Salon, TestSalon.Ina, Towels);
                return 0;
            }
        );
        Assert.Empty(await FindAsync(salon, "first"));
    }

    private static Task<int> KeepAsync(
        TestSalon salon,
        string hash,
        (string Question, int Percent) said,
        IReadOnlyDictionary<string, int> given
    ) =>
        InBook(
            salon,
            async book =>
            {
                await book.KeepAsync(TestSalon.Salon, TestSalon.Ina, Towels, hash, said, given);
                return 0;
            }
        );

    private static async Task<IEnumerable<string>> FindAsync(TestSalon salon, string hash) =>
        (await InBook(salon, book => book.FindAsync(TestSalon.Salon, TestSalon.Ina, Towels, hash, Stop)))
            .Select(one => $"{one.Key} {one.Value}")
            .Order(StringComparer.Ordinal);

    private static Task<T> InBook<T>(TestSalon salon, Func<JudgingBook, Task<T>> work) =>
        salon.InDbAsync(db => work(new JudgingBook(db)));
}
