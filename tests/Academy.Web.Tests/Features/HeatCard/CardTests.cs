using System.Net;
using Academy.Web.Shell;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Features.HeatCard;

/// <summary>
/// The first aid of the card against published veterinary guidance: heatstroke.dog (20 July 2023, describing the Vet-COT 2016
/// prehospital guideline), Vets Now "Wet before vet", UK-Vet Companion Animal, and Animals 2023;13(23):3673 on cooling methods.
/// </summary>
public sealed class CardTests
{
    [Fact]
    public async Task Nobody_is_asked_who_they_are()
    {
        await using var portal = new Portal();
        using var answer = await portal.Visitor().GetAsync("/heat", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    // Cool first, transport second (heatstroke.dog; UK-Vet Companion Animal); phone while cooling (Vets Now).
    [Fact]
    public async Task The_steps_stand_in_the_order_of_the_guidance()
    {
        var card = await OpenAsync(new Portal());

        Assert.Equal(
            ["Stop", "Wet the dog and move air over it. Start at once.", "Phone the vet while you cool", "Then drive"],
            card.QuerySelectorAll(".psteps h2").Select(step => step.TextContent)
        );
    }

    // Any water cooler than the dog, colder is faster (Vets Now); immersion for the young, fit and conscious, water and moving
    // air for the old, the ill and the unconscious (heatstroke.dog; Vets Now); a cooled car (Vets Now).
    [Theory]
    [InlineData("Any water cooler than the dog. Colder works faster")]
    [InlineData("keep air moving over the dog")]
    [InlineData("Old, ill or not awakeWater and moving air only. Not into a bath.")]
    [InlineData("windows open or air-con on")]
    [InlineData("Always phone, also when the dog looks better.")]
    public async Task The_card_says_what_the_guidance_says(string words)
    {
        var card = await OpenAsync(new Portal());

        Assert.Contains(words, card.QuerySelector(".psteps")!.TextContent, StringComparison.Ordinal);
    }

    // No waiting and no covering towel (heatstroke.dog); no alcohol (Animals 2023;13:3673); no muzzle (a veterinary column,
    // a weak source, and said so on the card); the last two are common practice, no published source.
    [Theory]
    [InlineData("wait for a thermometer, or for a vet, before cooling")]
    [InlineData("leave a wet towel lying over the dog")]
    [InlineData("put alcohol on the pads")]
    [InlineData("put or keep a muzzle on the dog")]
    [InlineData("put a dog that is not awake into water, or leave it alone")]
    [InlineData("finish the groom")]
    public async Task The_card_says_what_not_to_do(string words)
    {
        var card = await OpenAsync(new Portal());

        Assert.Contains(card.QuerySelectorAll(".never li"), line => line.TextContent.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_card_names_its_sources_and_defers_to_the_vet()
    {
        var sources = (await OpenAsync(new Portal())).QuerySelector(".sources")!.TextContent;

        Assert.Contains("heatstroke.dog", sources, StringComparison.Ordinal);
        Assert.Contains("Vets Now", sources, StringComparison.Ordinal);
        Assert.Contains("UK-Vet Companion Animal", sources, StringComparison.Ordinal);
        Assert.Contains("take any muzzle off (veterinary column)", sources, StringComparison.Ordinal);
        Assert.Contains("the vet’s word goes before this card", sources, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_salons_vet_is_one_touch_away()
    {
        var card = await OpenAsync(
            new Portal()
                .With("Site:Vet:Phone", "+44 1632 960 417")
                .With("Site:Vet:Practice", "The practice at the quay")
                .With("Site:Address", "Harbour Lane 9")
        );

        Assert.All(card.QuerySelectorAll("a.call"), call => Assert.Equal("tel:+441632960417", call.GetAttribute("href")));
        Assert.Equal(2, card.QuerySelectorAll("a.call").Length);
        Assert.Contains("The practice at the quay", card.QuerySelector("a.call")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("cooling now, Harbour Lane 9", card.QuerySelector(".psteps")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_number_the_card_says_whom_to_phone()
    {
        var card = await OpenAsync(new Portal());

        Assert.Empty(card.QuerySelectorAll("a.call"));
        Assert.Contains(
            "Phone the nearest vet that is open",
            card.QuerySelector(".call.blank")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_card_stands_when_the_number_cannot_be_read()
    {
        var portal = new Portal().With<IVetPhone>(new UnreadableVetPhone());
        var card = await OpenAsync(portal);

        Assert.Equal(4, card.QuerySelectorAll(".psteps > li").Length);
        Assert.NotNull(card.QuerySelector(".call.blank"));
        Assert.Contains(portal.Log.Lines, line => line.Contains("could not be read", StringComparison.Ordinal));
    }

    private static async Task<IHtmlDocument> OpenAsync(Portal portal)
    {
        await using (portal)
        {
            using var answer = await portal.Visitor().GetAsync("/heat", TestContext.Current.CancellationToken);
            return await Portal.ReadAsync(answer);
        }
    }

    private sealed class UnreadableVetPhone : IVetPhone
    {
        public ValueTask<VetPhone?> FindAsync(CancellationToken stop) => throw new IOException("The disk is gone.");
    }
}
