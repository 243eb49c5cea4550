using System.Globalization;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public class ReasonWordsTests
{
    public static TheoryData<string> Types => [.. Sample.ReasonTypes.Select(type => type.Name)];

    [Fact]
    public void There_are_reasons_to_speak_of() =>
        Assert.True(Sample.ReasonTypes.Count >= 75, $"{Sample.ReasonTypes.Count} reasons");

    [Theory]
    [MemberData(nameof(Types))]
    public void Every_reason_is_a_whole_sentence_with_its_numbers(string type)
    {
        var reasons = Sample.Reasons(Sample.ReasonTypes.Single(one => one.Name == type)).ToList();

        Assert.NotEmpty(reasons);
        Assert.All(reasons, IsAWholeSentence);
        Assert.All(reasons, CarriesItsNumbers);
    }

    private static void IsAWholeSentence(Reason reason)
    {
        var sentence = reason.Says();
        Assert.True(char.IsUpper(sentence[0]) || char.IsDigit(sentence[0]) || sentence[0] == '“', sentence);
        Assert.EndsWith(".", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("..", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("  ", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(": .", sentence, StringComparison.Ordinal);
        Assert.All(Sample.ReasonTypes, type => Assert.DoesNotContain(type.Name, sentence, StringComparison.Ordinal));
        Assert.All((char[])['{', '}', '[', ']', '_'], sign => Assert.DoesNotContain(sign, sentence));
        Plain.Check(sentence);
    }

    private static void CarriesItsNumbers(Reason reason)
    {
        var sentence = reason.Says();
        foreach (var property in reason.GetType().GetProperties().Where(one => IsSaid(reason, one.Name)))
        {
            if (Expected(property.Name, property.GetValue(reason)) is { } words)
                Assert.Contains(words, sentence, StringComparison.OrdinalIgnoreCase);
        }
    }

    private static bool IsSaid(Reason reason, string property) =>
        (reason, property) switch
        {
            // Nobody passed it, so no day is told.
            (ModuleLacking { State: ModuleState.NotPassed or ModuleState.NotInLibrary }, "PassedOn") => false,
            // Marks are told only where there is a row to fill.
            (NotAloneIn { Have: null } or NotAloneIn { Need: null }, "Have" or "Need") => false,
            _ => true,
        };

    private static string? Expected(string name, object? value) =>
        value switch
        {
            int tenths when name.EndsWith("TenthsC", StringComparison.Ordinal) => (tenths / 10m).ToString(
                "0.0",
                CultureInfo.InvariantCulture
            ) + " °C",
            int number => number.ToString(CultureInfo.InvariantCulture),
            DateOnly => "12 March",
            DateTimeOffset => "5:00 today",
            PersonId => "Ines",
            SkillCode skill when name is "Skill" or "Coat" or "Hazard" => skill == SkillBook.FaceScissoring
                ? "face"
                : skill.Value,
            ModuleName => "“Heat stroke”",
            StandingKind standing => Say.Word(standing),
            Role role => Say.Word(role),
            Gap => "11 of 17 marks",
            _ => null,
        };

    [Fact]
    public void A_row_says_how_many_more_grooms_would_fill_it()
    {
        Assert.Equal("11 of 17 marks; 6 more grooms that suit would fill the row.", new RowNotFull(11, 17).Says());
        Assert.Equal("16 of 17 marks; 1 more groom that suits would fill the row.", new RowNotFull(16, 17).Says());
        Assert.Equal(
            "Wool: 11 of 17 marks; 6 more grooms that suit would fill the row.",
            new NotReady(SkillBook.Wool, new RowNotFull(11, 17)).Says()
        );
    }

    [Fact]
    public void Recency_says_when_the_last_groom_was_and_how_long_ago()
    {
        Assert.Equal(
            "1 of 3 grooms in the last 120 days, the last one 12 March, 131 days ago; 2 more asked.",
            new TooFewRecentGrooms(1, 3, 120, Sample.March12).Says()
        );
        Assert.Equal(
            "0 of 3 grooms in the last 120 days, none on record before; 3 more asked.",
            new TooFewRecentGrooms(0, 3, 120, LastOn: null).Says()
        );
    }

    [Fact]
    public void One_incident_waits_and_two_incidents_wait()
    {
        Assert.Equal("1 incident waits for the owner's review.", new ReviewOpen(1).Says());
        Assert.Equal("2 incidents wait for the owner's review.", new ReviewOpen(2).Says());
    }

    [Theory]
    [InlineData(0, "Wool: a senior stands beside until the drift count has fallen.")]
    [InlineData(1, "Wool: a senior stands beside for the next groom.")]
    [InlineData(2, "Wool: a senior stands beside for the next 2 grooms.")]
    public void A_watch_says_for_how_many_grooms(int yet, string sentence) =>
        Assert.Equal(sentence, new Watched(SkillBook.Wool, yet).Says());

    [Fact]
    public void A_modules_only_skill_on_the_way_back_speaks_of_no_marks() =>
        Assert.Equal("Too long without a groom: the owner decides again.", new OnTheWayBack(WayBack.Long, 0, 0).Says());

    [Fact]
    public void A_refusal_says_each_sentence_once_in_order() =>
        Assert.Equal(
            ["Only the owner may do this.", "Write a name."],
            Say.Reasons([new OwnerOnly(), new WordsNeeded(WordsFor.Name), new OwnerOnly()], Sample.Names)
        );

    [Fact]
    public void Somebody_who_is_not_in_the_book_is_not_called_by_a_number() =>
        Assert.Equal("Somebody no longer in the book did no part of this groom.", new DidNoPart(new PersonId(Guid.Empty)).Says());
}
