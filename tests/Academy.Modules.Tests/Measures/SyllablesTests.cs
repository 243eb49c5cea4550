using System.Globalization;
using Academy.Modules.Measures;
using CsvHelper;

namespace Academy.Modules.Tests.Measures;

public class SyllablesTests
{
    // Merriam-Webster's division of each word, from memory; all agree with the CMU Pronouncing Dictionary.
    [Theory]
    [InlineData("dog", 1)]
    [InlineData("groomed", 1)]
    [InlineData("clipped", 1)]
    [InlineData("matted", 2)]
    [InlineData("brushes", 2)]
    [InlineData("blades", 1)]
    [InlineData("muzzle", 2)]
    [InlineData("tongue", 1)]
    [InlineData("drying", 2)]
    [InlineData("dryer", 2)]
    [InlineData("terrier", 3)]
    [InlineData("retriever", 3)]
    [InlineData("panting", 2)]
    [InlineData("emergency", 4)]
    [InlineData("temperature", 4)]
    [InlineData("safety", 2)]
    [InlineData("don't", 1)]
    [InlineData("dog's", 1)]
    [InlineData("Ä", 1)]
    [InlineData("kg", 1)] // no vowel is still one beat
    public void A_word_has_as_many_syllables_as_beats(string word, int beats) => Assert.Equal(beats, Syllables.Of(word));

    // data/measures/syllables.csv: CMU Pronouncing Dictionary.
    [Fact]
    public void Nearly_every_word_of_the_modules_agrees_with_the_pronouncing_dictionary()
    {
        var words = Dictionary();
        var wrong = words.Where(word => Syllables.Of(word.Word) < word.Fewest || Syllables.Of(word.Word) > word.Most).ToArray();

        Assert.InRange(words.Length, 1000, 5000);
        Assert.True(wrong.Length <= words.Length / 50, string.Join(", ", wrong.Select(word => word.Word)));
        Assert.Equal(
            1.0,
            words.Sum(word => (double)Syllables.Of(word.Word)) / words.Sum(word => (word.Fewest + word.Most) / 2.0),
            0.01
        );
    }

    private static (string Word, int Fewest, int Most)[] Dictionary()
    {
        using StreamReader file = new(Path.Combine(AppContext.BaseDirectory, "data", "measures", "syllables.csv"));
        using CsvReader csv = new(file, CultureInfo.InvariantCulture);
        return
        [
            .. csv.GetRecords(
                    new
                    {
                        word = "",
                        fewest = 0,
                        most = 0,
                    }
                )
                .Select(row => (row.word, row.fewest, row.most)),
        ];
    }
}
