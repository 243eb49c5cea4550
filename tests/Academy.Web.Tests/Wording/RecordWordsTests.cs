using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Statistics;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public sealed class RecordWordsTests
{
    // Beta(1 + unsuitable, 1 + suitable), the middle 90 %: 0 of 20 .2 to 13 %, 1 2 to 21 %, 2 4 to 27 %, 4 10 to 38 %. Checked
    // against scipy in learning_and_eb.json of the project's papers.
    [Theory]
    [InlineData(
        0,
        20,
        "None of the last 20 needed fixing. Groomers with such a record typically need fixing between less than 1 in 100 and 1 in 8."
    )]
    [InlineData(
        1,
        20,
        "1 of the last 20 needed fixing. Groomers with such a record typically need fixing between 1 in 60 and 1 in 5."
    )]
    [InlineData(
        2,
        20,
        "2 of the last 20 needed fixing. Groomers with such a record typically need fixing between 1 in 25 and 1 in 4."
    )]
    [InlineData(
        4,
        20,
        "4 of the last 20 needed fixing. Groomers with such a record typically need fixing between 1 in 10 and 1 in 3."
    )]
    [InlineData(
        14,
        20,
        "14 of the last 20 needed fixing. Groomers with such a record typically need fixing between 10 in 20 and 17 in 20."
    )]
    [InlineData(1, 4, "1 of the last 4 needed fixing.")]
    [InlineData(0, 0, "No rated groom yet.")]
    public void A_record_is_said_in_counts_and_from_five_grooms_on_with_what_is_typical(int unsuitable, int rated, string said) =>
        Assert.Equal(said, Say.Record(Rated(unsuitable, rated)));

    private static Tally Rated(int unsuitable, int rated) =>
        Tally.Empty with
        {
            Last = Enumerable
                .Range(0, rated)
                .Select(at => new RatedGroom(
                    Guid.Empty,
                    Sample.March12,
                    "Poodle",
                    Sample.Ines,
                    at < unsuitable ? Verdict.Unsuitable : Verdict.Suitable
                ))
                .ToListed(),
        };
}
