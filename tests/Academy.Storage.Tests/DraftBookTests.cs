using System.Collections.Immutable;
using Academy.Competence;

namespace Academy.Storage.Tests;

public sealed class DraftBookTests
{
    private static readonly ModuleName Towels = new("towels");
    private static readonly SalonId Elsewhere = new(TestSalon.Id(900));
    private static readonly Draft Written = new(
        Towels,
        "# Towels",
        TestSalon.Ina,
        TestSalon.Opening,
        AskedAt: null,
        "Two towels, not one.",
        new DateOnly(2026, 1, 20),
        Returned: null,
        Version: 1
    );
    private static readonly ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Pictures = ImmutableSortedDictionary<
        string,
        ReadOnlyMemory<byte>
    >.Empty.Add("press.svg", new byte[] { 1, 2, 3 });

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_draft_comes_back_as_it_was_saved_with_its_pictures()
    {
        using var salon = await TestSalon.OpenAsync();

        Assert.True(await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures)));

        Assert.Equal(Written, await FindAsync(salon));
        Assert.Equal(["press.svg 010203"], await PicturesAsync(salon));
        var line = Assert.Single(await InBook(salon, book => book.AllAsync(TestSalon.Salon, Stop)));
        Assert.Equal(new DraftLine(Towels, TestSalon.Ina, TestSalon.Opening, AskedAt: null), line);
    }

    [Fact]
    public async Task Two_who_begin_the_same_module_write_one_draft()
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures));

        Assert.False(await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written with { Text = "another" }, Pictures)));

        Assert.Equal("# Towels", (await FindAsync(salon))!.Text);
    }

    [Fact]
    public async Task A_save_over_a_version_that_moved_on_changes_nothing()
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures));

        Assert.True(await InBook(salon, book => book.SaveAsync(TestSalon.Salon, Written with { Text = "first" })));
        Assert.False(await InBook(salon, book => book.SaveAsync(TestSalon.Salon, Written with { Text = "second" })));

        Assert.Equal(Written with { Text = "first", Version = 2 }, await FindAsync(salon));
    }

    [Fact]
    public async Task What_was_given_back_says_by_whom_and_why()
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures));
        var returned = Written with { Returned = new(TestSalon.Rosa, "Say which towels.") };

        await InBook(salon, book => book.SaveAsync(TestSalon.Salon, returned));

        Assert.Equal(returned with { Version = 2 }, await FindAsync(salon));
        Assert.True(Assert.Single(await InBook(salon, book => book.AllAsync(TestSalon.Salon, Stop))).IsReturned);
    }

    [Fact]
    public async Task A_picture_takes_the_place_of_the_one_of_its_name_and_can_be_taken_out()
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures));

        Assert.True(await InBook(salon, book => book.PutPictureAsync(TestSalon.Salon, Towels, "press.svg", new byte[] { 9 })));
        Assert.Equal(["press.svg 09"], await PicturesAsync(salon));

        await InBook(salon, book => Told(book.TakePictureAsync(TestSalon.Salon, Towels, "press.svg")));
        await InBook(salon, book => Told(book.TakePictureAsync(TestSalon.Salon, Towels, "press.svg")));
        Assert.Empty(await PicturesAsync(salon));
    }

    [Fact]
    public async Task A_picture_for_a_draft_that_is_gone_is_not_kept()
    {
        using var salon = await TestSalon.OpenAsync();

        Assert.False(await InBook(salon, book => book.PutPictureAsync(TestSalon.Salon, Towels, "press.svg", new byte[] { 9 })));
        Assert.Empty(await PicturesAsync(salon));
    }

    [Fact]
    public async Task An_ended_draft_is_gone_with_its_pictures()
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures));

        Assert.True(await InBook(salon, book => book.EndAsync(TestSalon.Salon, Towels, version: 1)));
        Assert.False(await InBook(salon, book => book.EndAsync(TestSalon.Salon, Towels, version: 1)));

        Assert.Null(await FindAsync(salon));
        Assert.Empty(await PicturesAsync(salon));
    }

    [Fact]
    public async Task A_draft_that_was_saved_meanwhile_is_not_thrown_away()
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures));
        await InBook(salon, book => book.SaveAsync(TestSalon.Salon, Written with { Text = "newer" }));

        Assert.False(await InBook(salon, book => book.EndAsync(TestSalon.Salon, Towels, version: 1)));

        Assert.Equal("newer", (await FindAsync(salon))!.Text);
        Assert.NotEmpty(await PicturesAsync(salon));
    }

    [Fact]
    public async Task Another_salon_sees_nothing_of_it()
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Written, Pictures));

        Assert.Null(await InBook(salon, book => book.FindAsync(Elsewhere, Towels, Stop)));
        Assert.Empty(await InBook(salon, book => book.AllAsync(Elsewhere, Stop)));
        Assert.Empty(await InBook(salon, book => book.PicturesAsync(Elsewhere, Towels, Stop)));
        Assert.False(await InBook(salon, book => book.SaveAsync(Elsewhere, Written)));
    }

    private static Task<Draft?> FindAsync(TestSalon salon) =>
        InBook(salon, book => book.FindAsync(TestSalon.Salon, Towels, Stop));

    private static async Task<string[]> PicturesAsync(TestSalon salon) =>
        [
            .. (await InBook(salon, book => book.PicturesAsync(TestSalon.Salon, Towels, Stop))).Select(picture =>
                $"{picture.Key} {Convert.ToHexString(picture.Value.Span)}"
            ),
        ];

    private static async Task<bool> Told(Task work)
    {
        await work;
        return true;
    }

    private static Task<T> InBook<T>(TestSalon salon, Func<DraftBook, Task<T>> work) =>
        salon.InDbAsync(db => work(new DraftBook(db)));
}
