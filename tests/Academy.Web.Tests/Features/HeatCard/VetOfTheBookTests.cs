using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.HeatCard;

/// <summary>The vet that the owner wrote into the book stands on the heat card, for everybody and without signing in.</summary>
public sealed class VetOfTheBookTests
{
    [Fact]
    public async Task The_vets_number_of_the_book_is_one_touch_away_and_goes_before_the_one_in_the_settings()
    {
        await using var portal = new PortalHost()
            .With("Site:Vet:Phone", "+44 20 7946 0000")
            .With("Site:Vet:Practice", "Old Vets");
        var cast = await portal.OpenSalonAsync();
        using var anyone = portal.Anyone();
        Assert.Equal("tel:+442079460000", Call(await anyone.GetAsync("/heat")));

        using var ines = await portal.AsAsync(cast, cast.Owner);
        await portal.KeepAsync(
            cast.Salon,
            Keeping.Describe(new Words(cast.Name), new Words("Harbour Vets"), new Words("+44 20 7946 0991"), cast.Owner),
            cast.Owner
        );
        var card = await anyone.GetAsync("/heat");

        Assert.Equal("tel:+442079460991", Call(card));
        Assert.Contains("Harbour Vets", card.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("Old Vets", card.Words, StringComparison.Ordinal);
        Assert.Equal("tel:+442079460991", Call(await ines.GetAsync("/heat")));
    }

    private static string? Call(Answer card) => card.Page.QuerySelector("a.call")!.GetAttribute("href");
}
