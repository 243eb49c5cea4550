using Academy.Competence.Dogs;
using CsCheck;

namespace Academy.Competence.Tests.Dogs;

// Numbers and groups: the fci-breeds list (MIT), compiled from the FCI's nomenclature; coats and weights are ours.
public class BreedsTests
{
    [Theory]
    [InlineData("Cairn Terrier", 4, 3)]
    [InlineData("Cocker Spaniel (English)", 5, 8)]
    [InlineData("Maltese", 65, 9)]
    [InlineData("Pomeranian", 97, 5)]
    [InlineData("Keeshond (Wolfspitz)", 97, 5)]
    [InlineData("Dachshund (smooth)", 148, 4)]
    [InlineData("Bulldog", 149, 2)]
    [InlineData("Greyhound", 158, 10)]
    [InlineData("Beagle", 161, 6)]
    [InlineData("Poodle (Toy)", 172, 9)]
    [InlineData("Poodle (Standard)", 172, 9)]
    [InlineData("Chow Chow", 205, 5)]
    [InlineData("Shih Tzu", 208, 9)]
    [InlineData("Pug", 253, 9)]
    [InlineData("Labrador Retriever", 122, 8)]
    [InlineData("English Setter", 2, 7)]
    [InlineData("Border Collie", 297, 1)]
    public void A_breed_has_the_FCIs_number_and_group(string name, int number, int group) =>
        Assert.Equal((number, group), (Named(name).FciNumber, Named(name).FciGroup));

    // Wrong numbers that go round in seed lists: 64 is the Austrian Pinscher, 98 the German Wire-haired Pointing Dog.
    [Fact]
    public void Wrong_numbers_that_go_round_are_not_here()
    {
        Assert.DoesNotContain(Breeds.All, breed => breed.FciNumber == 64);
        Assert.Equal(
            ["German Wire-haired Pointing Dog"],
            Breeds.All.Where(breed => breed.FciNumber == 98).Select(breed => breed.Name)
        );
    }

    [Fact]
    public void Varieties_share_a_number_so_it_is_no_key()
    {
        var shared = Breeds
            .All.Where(breed => breed.FciNumber is not null)
            .GroupBy(breed => breed.FciNumber)
            .Where(group => group.Count() > 1);

        Assert.Equal([15, 97, 148, 172, 218, 288, 345], shared.Select(group => group.Key!.Value).Order());
    }

    [Fact]
    public void The_name_is_a_key() => Assert.Equal(Breeds.All.Count, Breeds.All.DistinctBy(breed => breed.Name).Count());

    [Fact]
    public void The_table_is_whole()
    {
        Assert.Equal(175, Breeds.All.Count);
        Assert.Equal(22, Breeds.All.Count(breed => breed.FciNumber is null));
        Assert.All(Breeds.All, breed => Assert.Equal(breed.FciNumber is null, breed.FciGroup is null));
        Assert.All(Breeds.All, breed => Assert.InRange(breed.FciGroup ?? 1, 1, 10));
    }

    // The English dog-groomer apprenticeship (ST0943) names six; hairless and corded are the trade's additions.
    [Fact]
    public void Every_breed_has_one_of_the_eight_coats_and_every_coat_has_a_breed() =>
        Assert.Equal(
            ["combination", "corded", "double", "hairless", "silky", "smooth", "wire", "wool"],
            Breeds.All.Select(breed => breed.Coat).Distinct().Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_weight_class_has_a_breed() =>
        Assert.Equal(Enum.GetValues<WeightClass>(), Breeds.All.Select(breed => breed.WeightClass).Distinct().Order());

    // Seven on the Royal Veterinary College's page on brachycephaly, two more in the Cambridge BOAS group's text
    [Theory]
    [InlineData("Boston Terrier")]
    [InlineData("Pug")]
    [InlineData("Cavalier King Charles Spaniel")]
    [InlineData("French Bulldog")]
    [InlineData("Bulldog")]
    [InlineData("Shih Tzu")]
    [InlineData("Boxer")]
    [InlineData("Pekingese")]
    [InlineData("Japanese Chin")]
    public void The_breeds_published_as_flat_faced_are_marked_so(string name) => Assert.True(Named(name).FlatFaced);

    [Fact]
    public void A_name_with_a_comma_is_one_name() =>
        Assert.Equal(
            new Breed("Crossbreed, double (unknown)", null, null, "double", FlatFaced: false, WeightClass.From20),
            Named("Crossbreed, double (unknown)")
        );

    [Fact]
    public void A_name_is_found_whatever_its_case_accents_and_points()
    {
        Assert.Equal("St. Bernard", Breeds.Named("st bernard")?.Name);
        Assert.Equal("Bichon Frise", Breeds.Named("BICHON FRISÉ")?.Name);
        Assert.Null(Breeds.Named("Bulldog, more or less"));
    }

    [Fact]
    public void Names_that_begin_with_the_text_come_first()
    {
        var found = Names("bull");

        Assert.Equal(["Bulldog", "Bullmastiff", "Bull Terrier"], found.Take(3));
        Assert.Equal(["French Bulldog", "Staffordshire Bull Terrier"], found.Skip(3));
    }

    [Theory]
    [InlineData("english cocker", "Cocker Spaniel (English)")]
    [InlineData("standard poodle", "Poodle (Standard)")]
    [InlineData("petit basset griffon vendéen", "Petit Basset Griffon Vendeen")]
    [InlineData("sproodle", "Springer x Poodle (Sproodle cross)")]
    public void Words_in_any_order_find_the_variety(string text, string first) => Assert.Equal(first, Names(text)[0]);

    [Fact]
    public void The_middle_of_a_word_is_found_last() =>
        Assert.Equal(
            ["Labradoodle (cross)", "Goldendoodle (cross)", "Bernedoodle (cross)", "Sheepadoodle (cross)"],
            Names("doodle")
        );

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("(.)")]
    [InlineData("zebra")]
    public void Text_that_names_no_dog_finds_nothing(string text) => Assert.Empty(Breeds.Find(text));

    [Fact]
    public void Any_beginning_of_a_name_finds_it() =>
        Gen.Select(Gen.Int[0, Breeds.All.Count - 1], Gen.Int[1, 40])
            .Sample(
                (index, letters) =>
                {
                    var breed = Breeds.All[index];
                    Assert.Contains(breed, Breeds.Find(breed.Name[..Math.Min(letters, breed.Name.Length)].ToUpperInvariant()));
                }
            );

    [Fact]
    public void Any_text_at_all_is_answered() => Gen.String.Sample(text => Breeds.Find(text).Count <= Breeds.All.Count);

    private static Breed Named(string name) => Breeds.All.Single(breed => breed.Name == name);

    private static List<string> Names(string text) => [.. Breeds.Find(text).Select(breed => breed.Name)];
}
