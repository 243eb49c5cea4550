using Academy.Competence.Dogs;

namespace Academy.Competence.Tests.Dogs;

// Our own rule: common practice, no published source.
public class HeavyCoatTests
{
    [Theory]
    [InlineData("Chow Chow", true)]
    [InlineData("Golden Retriever", true)]
    [InlineData("Newfoundland", true)]
    [InlineData("Australian Shepherd", true)] // 20 kg is enough
    [InlineData("Pomeranian", true)] // a spitz of any size
    [InlineData("Shiba", true)]
    [InlineData("Border Collie", false)] // double, but below 20 kg
    [InlineData("Shetland Sheepdog", false)] // for the person to add
    [InlineData("Great Dane", false)] // heavy, but smooth
    [InlineData("Basenji", false)] // group 5, but smooth
    [InlineData("Crossbreed, double (unknown)", true)]
    public void A_heavy_coat_is_a_double_one_on_a_big_dog_or_a_spitz(string name, bool suggested) =>
        Assert.Equal(suggested, HeavyCoat.IsSuggestedFor(Breeds.All.Single(breed => breed.Name == name)));

    [Fact]
    public void Every_breed_published_as_slow_to_regrow_that_is_big_or_a_spitz_is_suggested() =>
        Assert.All(
            // Plush coats named in the literature on alopecia after clipping (Cerundolo 1999, Rosenbaum 2001)
            ["Alaskan Malamute", "Siberian Husky", "Chow Chow", "Samoyed", "Keeshond (Wolfspitz)", "Pomeranian", "Newfoundland"],
            name => Assert.True(HeavyCoat.IsSuggestedFor(Breeds.All.Single(breed => breed.Name == name)))
        );
}
