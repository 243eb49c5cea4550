using System.Reflection;
using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public class EnumWordsTests
{
    private static readonly Type[] s_enums = [.. typeof(Reason).Assembly.GetExportedTypes().Where(type => type.IsEnum)];

    public static TheoryData<string> Enums => [.. s_enums.Select(type => type.Name)];

    [Fact]
    public void There_are_enumerations_to_speak_of() => Assert.True(s_enums.Length >= 23, $"{s_enums.Length} enumerations");

    [Theory]
    [MemberData(nameof(Enums))]
    public void Every_value_of_every_enumeration_has_a_word_of_its_own(string name)
    {
        var type = s_enums.Single(one => one.Name == name);
        var words = Words("Word", type).ToList();

        Assert.NotEmpty(words);
        Assert.All(words, word => Assert.False(string.IsNullOrWhiteSpace(word)));
        Assert.Equal(words.Count, words.Distinct(StringComparer.Ordinal).Count());
        Assert.All(words, Plain.Check);
    }

    [Theory]
    [InlineData(typeof(SupportLevel))]
    [InlineData(typeof(Criterion))]
    [InlineData(typeof(StandingKind))]
    [InlineData(typeof(CoatCondition))]
    [InlineData(typeof(Consent))]
    [InlineData(typeof(Academy.Competence.Salons.Severity))]
    public void What_a_form_explains_has_a_half_line(Type type) =>
        Assert.All(
            Words("Note", type),
            note =>
            {
                Assert.InRange(note.Length, 10, 70);
                Plain.Check(note);
            }
        );

    [Fact]
    public void Every_standing_names_its_shape_in_the_swatch_book() =>
        Assert.Equal(
            ["learning", "ready", "alone", "check-again", "lapsed", "stood-down"],
            Enum.GetValues<StandingKind>().Select(Say.Shape)
        );

    [Fact]
    public void Choices_carry_value_word_and_note()
    {
        var picks = Say.Picks<SupportLevel>(Say.Word, Say.Note);

        Assert.Equal(5, picks.Count);
        Assert.Equal(
            ("StoodBy", "Stood by, not needed", "you were there and said almost nothing"),
            (picks[3].Value, picks[3].Words, picks[3].Note)
        );
    }

    [Fact]
    public void Support_levels_carry_their_numbers() =>
        Assert.Equal(["1", "2", "3", "4", "5"], Say.Levels.Select(level => level.Number));

    [Fact]
    public void A_value_outside_an_enumeration_is_a_mistake_and_not_a_word() =>
        Assert.Throws<System.Diagnostics.UnreachableException>(() => Say.Word((StandingKind)99));

    private static IEnumerable<string> Words(string method, Type type)
    {
        var word = typeof(Say).GetMethod(method, BindingFlags.Public | BindingFlags.Static, [type]);
        Assert.True(word is not null, $"Say.{method} has no words for {type.Name}.");
        return Enum.GetValues(type).Cast<object>().Select(value => (string)word.Invoke(null, [value])!);
    }
}
