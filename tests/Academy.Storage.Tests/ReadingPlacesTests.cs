using Academy.Competence;

namespace Academy.Storage.Tests;

public sealed class ReadingPlacesTests
{
    private static readonly ModuleName Towels = new("towels");
    private static readonly ReadingPlace Signs = new(Towels, "signs", TestSalon.Opening);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_newest_place_in_each_module_is_kept_and_one_that_comes_late_changes_nothing()
    {
        using var salon = await TestSalon.OpenAsync();
        var later = Signs with { Part = "cool-first", At = Signs.At.AddMinutes(5) };
        var other = new ReadingPlace(new("blades"), "burns", Signs.At.AddMinutes(9));

        foreach (var place in (ReadingPlace[])[Signs, later, Signs, other])
            await KeepAsync(salon, place);

        Assert.Equal([other, later], await InBook(salon, places => places.OfAsync(TestSalon.Salon, TestSalon.Pim, Stop)));
        Assert.Equal(later, await InBook(salon, places => places.FindAsync(TestSalon.Salon, TestSalon.Pim, Towels, Stop)));
    }

    [Fact]
    public async Task Nobody_else_and_no_other_salon_finds_it()
    {
        using var salon = await TestSalon.OpenAsync();
        await KeepAsync(salon, Signs);

        Assert.Empty(await InBook(salon, places => places.OfAsync(TestSalon.Salon, TestSalon.Rosa, Stop)));
        Assert.Null(await InBook(salon, places => places.FindAsync(new SalonId(TestSalon.Id(900)), TestSalon.Pim, Towels, Stop)));
    }

    private static Task<bool> KeepAsync(TestSalon salon, ReadingPlace place) =>
        InBook(
            salon,
            async places =>
            {
                await places.KeepAsync(TestSalon.Salon, TestSalon.Pim, place);
                return true;
            }
        );

    private static Task<T> InBook<T>(TestSalon salon, Func<ReadingPlaces, Task<T>> work) =>
        salon.InDbAsync(db => work(new ReadingPlaces(db)));
}
