using Academy.Competence;
using Academy.Competence.Salons;

namespace Academy.Storage.Tests;

public sealed class EditionBookTests
{
    private static readonly ModuleName Blades = new("blades");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_text_of_an_edition_is_kept_once_and_never_changed()
    {
        using var salon = await TestSalon.OpenAsync();

        await InBook(salon, book => KeepAsync(book, "first", "as it was"));
        await InBook(salon, book => KeepAsync(book, "first", "as somebody would like it"));
        await InBook(salon, book => KeepAsync(book, "second", "as it is"));

        Assert.Equal("as it was", await InBook(salon, book => book.TextAsync(Blades, "first", Stop)));
        Assert.Equal("as it is", await InBook(salon, book => book.TextAsync(Blades, "second", Stop)));
        Assert.Null(await InBook(salon, book => book.TextAsync(Blades, "third", Stop)));
        Assert.Null(await InBook(salon, book => book.TextAsync(new("other"), "first", Stop)));
    }

    [Fact]
    public async Task A_salon_knows_which_edition_it_saw_last()
    {
        using var salon = await TestSalon.OpenAsync();
        Assert.Empty(await InBook(salon, book => book.SeenAsync(TestSalon.Salon, Stop)));

        await salon.KeepAsync(Keeping.SeeEdition(Blades, 1, 1, 90, false, "first"), TestSalon.Ina, TestSalon.Opening);
        await salon.KeepAsync(Keeping.SeeEdition(new("heat"), 4, 2, 90, true, "hot"), TestSalon.Ina, TestSalon.Opening);
        await salon.KeepAsync(Keeping.SeeEdition(Blades, 2, 1, 90, false, "second"), TestSalon.Ina, TestSalon.Opening);

        Assert.Equal(
            new Dictionary<ModuleName, string> { [Blades] = "second", [new("heat")] = "hot" },
            await InBook(salon, book => book.SeenAsync(TestSalon.Salon, Stop))
        );
        Assert.Empty(await InBook(salon, book => book.SeenAsync(new(TestSalon.Id(900)), Stop)));
        Assert.Equal([TestSalon.Salon], await InBook(salon, book => book.SalonsAsync(Stop)));
    }

    private static async Task<int> KeepAsync(EditionBook book, string hash, string text)
    {
        await book.KeepAsync(Blades, hash, () => text);
        return 1;
    }

    private static Task<T> InBook<T>(TestSalon salon, Func<EditionBook, Task<T>> work) =>
        salon.InDbAsync(db => work(new EditionBook(db)));
}
