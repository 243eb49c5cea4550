using Academy.Competence.Statistics;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public class CountsTests
{
    [Theory]
    [InlineData(0, "0 grooms")]
    [InlineData(1, "1 groom")]
    [InlineData(2, "2 grooms")]
    public void One_is_singular_and_everything_else_plural(int count, string words) =>
        Assert.Equal(words, Counts.Of(count, "groom"));

    [Theory]
    [InlineData(0, 0, "no rated groom yet")]
    [InlineData(0, 1, "the last one suited")]
    [InlineData(1, 1, "the last one needed fixing")]
    [InlineData(0, 20, "none of the last 20 needed fixing")]
    [InlineData(1, 20, "1 of the last 20 needed fixing")]
    [InlineData(2, 20, "2 of the last 20 needed fixing")]
    public void Small_numbers_are_said_as_counts(int fixedOnes, int last, string words) =>
        Assert.Equal(words, Counts.NeededFixing(fixedOnes, last));

    [Fact]
    public void Counts_out_of_something_read_plainly()
    {
        Assert.Equal("11 of 15", Counts.OutOf(11, 15));
        Assert.Equal("18 of the last 20 suited", Counts.Suited(18, 20));
        Assert.Equal("no rated groom yet", Counts.Suited(0, 0));
        Assert.Equal("24.0 °C", Counts.Celsius(240));
        Assert.Equal("-1.5 °C", Counts.Celsius(-15));
    }

    [Theory]
    [InlineData(0.0001, "less than 1 in 1000")]
    [InlineData(0.049, "about 1 in 20")]
    [InlineData(0.19, "about 1 in 5")]
    [InlineData(0.87, "about 17 in 20")]
    [InlineData(0.99, "more than 19 in 20")]
    public void A_chance_is_said_as_one_in_so_many(double chance, string words) => Assert.Equal(words, Counts.Chance(chance));

    [Fact]
    public void Names_are_joined_as_people_say_them()
    {
        Assert.Equal("nobody", Counts.Or([]));
        Assert.Equal("Ines", Counts.Or(["Ines"]));
        Assert.Equal("Ines or Ruben", Counts.Or(["Ines", "Ruben"]));
        Assert.Equal("Ines, Ruben and Kit", Counts.And(["Ines", "Ruben", "Kit"]));
    }

    [Fact]
    public void A_row_says_what_it_lets_through_before_it_is_saved()
    {
        var sentences = Say.Promise(RowProfile.Standard, RowPromise.Of(RowProfile.Standard));

        Assert.Equal(4, sentences.Count);
        // The owner's words for the standard row: "1 in 3 has about a 1 in 20 chance of filling the row by luck within 50" is the
        // form; the figure for this row comes from the exact chain, which has check values of its own.
        Assert.StartsWith("15 marks fill the row;", sentences[0], StringComparison.Ordinal);
        Assert.StartsWith("Someone who needs fixing 1 groom in 3 has a chance of ", sentences[1], StringComparison.Ordinal);
        Assert.Contains("1 groom in 10 fills it in about 2", sentences[3], StringComparison.Ordinal);
        Assert.All(sentences, Plain.Check);
    }
}
