using System.Text.Json;
using Academy.Competence.Judges;

namespace Academy.Competence.Tests.Judges;

/// <summary>
/// data/competence/severity_data.csv and severity_model.json: 240 invented ratings of eight juniors by four seniors on three coats;
/// the same model fitted in R 4.2.2.
/// </summary>
public class SeverityTests
{
    private static readonly JsonElement Check = CheckFigures.Read("competence/severity_model.json");
    private static readonly JudgedGroom[] Grooms =
    [
        .. CheckValues
            .Read("competence/severity_data.csv", rows: 240)
            .Select(row => new JudgedGroom(
                Person(row.Whole("junior")),
                Person(100 + row.Whole("assessor")),
                new($"coat-{row.Whole("coat")}"),
                row.Whole("nth"),
                row.Whole("pass") == 1
            )),
    ];

    [Theory]
    [InlineData(.3, .2)]
    [InlineData(.8, .2)]
    [InlineData(1.5, .2)]
    [InlineData(.3, .5)]
    [InlineData(.8, .5)]
    [InlineData(1.5, .5)]
    [InlineData(.3, 1.2)]
    [InlineData(.8, 1.2)]
    [InlineData(1.5, 1.2)]
    public void The_evidence_of_given_spreads_agrees_with_the_other_program(double ofGroomers, double ofJudges)
    {
        var expected = Check
            .GetProperty("evidence_grid")
            .EnumerateArray()
            .Single(row => row.Number("sj") == ofGroomers && row.Number("sa") == ofJudges);

        // the check's logarithms of the numbers of grooms were rounded to six places
        Assert.Equal(expected.Number("evidence"), Severity.At(Grooms, ofGroomers, ofJudges).Evidence, 2e-5);
    }

    [Fact]
    public void The_spreads_that_fit_best_agree_with_the_other_program()
    {
        var found = Severity.Of(Grooms)!;
        var expected = Check.GetProperty("map_estimated_sigma");

        Assert.Equal(expected.Number("sigma_junior"), found.SpreadOfGroomers, 1e-3);
        Assert.Equal(expected.Number("sigma_assessor"), found.SpreadOfJudges, 1e-3);
    }

    [Fact]
    public void Who_is_strict_and_who_is_kind_agrees_with_the_other_program()
    {
        var (found, derived) = (Severity.Of(Grooms)!, Check.GetProperty("derived"));
        Assert.Equal(4, found.Judges.Count);
        for (var place = 0; place < 4; place++)
        {
            var judge = found.Judges.Single(one => one.Judge == Person(101 + place));

            Assert.Equal(derived.Numbers("assessor_centred")[place], judge.Kindness, 2e-3);
            Assert.Equal(derived.Numbers("assessor_centred_se")[place], judge.StandardError, 2e-3);
            Assert.Equal(derived.Numbers("assessor_pass_rate_if_rated_everything")[place], judge.ShareOfAll, 1e-3);
            Assert.Equal(derived.Numbers("raw_assessor")[place], judge.RawShare, 1e-9);
        }
    }

    // lme4's glmer on the same ratings: the same order of judges, each within .15 logit of this model at the spreads it finds
    [Fact]
    public void The_order_of_the_judges_is_that_of_a_general_program()
    {
        var found = Severity.Of(Grooms)!;
        var theirs = Check.GetProperty("glmer_nAGQ1").Numbers("assessor");

        Assert.Equal(
            Enumerable.Range(0, 4).OrderBy(place => theirs[place]).Select(place => Person(101 + place)),
            found.Judges.Select(judge => judge.Judge)
        );
    }

    [Fact]
    public void The_strictest_and_the_kindest_are_worth_a_talk_and_the_two_between_are_not() =>
        Assert.Equal([true, false, false, true], Severity.Of(Grooms)!.Judges.Select(judge => judge.IsWorthATalk));

    [Fact]
    public void Below_fifteen_ratings_nothing_is_said_of_a_judge()
    {
        var few = Severity.Of([.. Grooms.Take(30)])!;

        Assert.All(few.Judges.Where(judge => judge.Rated < 15), judge => Assert.False(judge.IsSayable || judge.IsWorthATalk));
        Assert.Contains(few.Judges, judge => !judge.IsSayable);
    }

    [Fact]
    public void Two_teams_that_never_mixed_cannot_be_compared()
    {
        JudgedGroom[] apart = [Rated(1, 101), Rated(2, 101), Rated(3, 102), Rated(4, 102)];

        Assert.False(Severity.AreComparable(apart));
        Assert.Null(Severity.Of(apart));
        Assert.True(Severity.AreComparable([.. apart, Rated(1, 102)]));
    }

    [Fact]
    public void Somebody_who_passed_everything_has_a_finite_place()
    {
        JudgedGroom[] allSuitable =
        [
            .. Grooms
                .Where(groom => groom.Groomer == Person(1) || groom.Groomer == Person(2))
                .Select(groom => groom with { IsSuitable = true }),
        ];

        Assert.All(Severity.Of(allSuitable)!.Judges, judge => Assert.True(double.IsFinite(judge.Kindness)));
    }

    [Fact]
    public void Without_ratings_there_is_nothing_to_say() => Assert.Null(Severity.Of([]));

    private static JudgedGroom Rated(int groomer, int judge) =>
        new(Person(groomer), Person(judge), new("smooth"), 1, IsSuitable: true);

    private static PersonId Person(int number) => new(new Guid(number, 0, 0, new byte[8]));
}
