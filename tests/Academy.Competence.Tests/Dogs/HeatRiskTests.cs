using Academy.Competence.Dogs;

namespace Academy.Competence.Tests.Dogs;

// Hall, Carter and O'Neill 2020, Scientific Reports 10:9128; rounded multiples of the authors' summary, "Nine dog breeds at
// higher risk of heatstroke"
public class HeatRiskTests
{
    [Fact]
    public void The_nine_breeds_stand_in_the_order_of_their_odds()
    {
        Assert.Equal([17, 14, 6, 5, 4, 3, 3, 3, 3], HeatRisk.Nine.Select(breed => breed.Multiple));
        Assert.Equal(
            ["Chow Chow", "Bulldog", "French Bulldog", "Dogue de Bordeaux", "Greyhound"],
            HeatRisk.Nine.Take(5).Select(breed => breed.Name)
        );
    }

    [Fact]
    public void Each_of_the_nine_is_a_breed_of_the_table() =>
        Assert.Equal(
            HeatRisk.Nine.Select(prone => prone.Name).Order(StringComparer.Ordinal),
            Breeds.All.Where(HeatRisk.IsHeatProne).Select(breed => breed.Name).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void The_reference_breed_never_stands_above_any_of_the_nine()
    {
        var reference = HeatRisk.MultipleOf(Named(HeatRisk.ReferenceBreed));

        Assert.Equal(1, reference);
        Assert.False(HeatRisk.IsHeatProne(HeatRisk.ReferenceBreed));
        Assert.All(HeatRisk.Nine, prone => Assert.True(HeatRisk.MultipleOf(Named(prone.Name)) > reference));
    }

    [Fact]
    public void The_Chow_Chow_is_not_flat_faced_and_yet_the_most_prone_of_all()
    {
        Assert.False(Named("Chow Chow").FlatFaced);
        Assert.True(HeatRisk.IsHeatProne(Named("Chow Chow")));
        Assert.Equal(17, Breeds.All.Max(HeatRisk.MultipleOf));
    }

    [Theory]
    [InlineData("Golden Retriever", true)]
    [InlineData("golden retriever", true)]
    [InlineData("Greyhound (retired racer)", true)] // a variety in brackets
    [InlineData("English Bulldog", true)] // the same breed in daily use; common practice, no published source
    [InlineData("American Bulldog", false)] // another breed that has the word
    [InlineData("Puggle (cross)", false)] // a cross: judge the dog
    [InlineData("Welsh Springer Spaniel", false)]
    [InlineData("", false)]
    public void A_name_says_whether_the_breed_is_prone(string name, bool prone) =>
        Assert.Equal(prone, HeatRisk.IsHeatProne(name));

    [Fact]
    public void Where_nothing_is_published_there_is_no_figure() => Assert.Null(HeatRisk.MultipleOf(Named("Boxer")));

    private static Breed Named(string name) => Breeds.All.Single(breed => breed.Name == name);
}
