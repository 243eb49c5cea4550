using Academy.Modules.Measures;

namespace Academy.Modules.Tests.Measures;

public class ReadingGradeTests
{
    // Wikipedia, "Flesch-Kincaid readability tests": 13 words, 24 syllables, grade 11.3.
    [Fact]
    public void The_platypus_sentence_reads_at_grade_11_3()
    {
        var grade = ReadingGrade.Of(["The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."]);

        Assert.Equal(new(Words: 13, Sentences: 1, Syllables: 24), grade);
        Assert.Equal("11.3", grade.ToString());
    }

    // The formula's own floor: one-word sentences of one syllable, 0.39 + 11.8 - 15.59 (Wikipedia, same page: -3.40).
    [Fact]
    public void No_text_is_easier_than_one_word_of_one_syllable() =>
        Assert.Equal(-3.40, ReadingGrade.Of(["Sit. Stay. Good."]).Grade, 2);

    // Kincaid and others 1975, the formula by hand: 6 words, 1 sentence, 6 syllables = 2.34 + 11.8 - 15.59.
    [Fact]
    public void Six_short_words_are_below_the_first_grade() =>
        Assert.Equal(-1.45, ReadingGrade.Of(["The dog sat on the mat."]).Grade, 2);

    [Theory]
    [InlineData("One. Two! Three? Four", 3)] // an end without a mark belongs to the last sentence
    [InlineData("Use a cool blade, e.g. a rested one.", 1)] // an abbreviation in the middle
    [InlineData("It is 39.4 °C. Stop.", 2)] // a decimal point ends nothing
    [InlineData("\"Stop.\" She said so.", 2)]
    [InlineData("Wait ... Now go.", 2)]
    [InlineData("no mark at all", 1)]
    public void Sentences_end_with_their_marks(string text, int sentences) =>
        Assert.Equal(sentences, ReadingGrade.Of([text]).Sentences);

    [Fact]
    public void Each_block_ends_a_sentence() =>
        Assert.Equal(3, ReadingGrade.Of(["Towel first", "Then the dryer", "Comb last"]).Sentences);

    [Theory]
    [InlineData("a flat-faced dog", 3)] // a hyphenated word is one
    [InlineData("2 - 3 dogs", 3)] // a dash is none
    [InlineData("", 0)]
    [InlineData(" . , ", 0)]
    public void Words_stand_between_spaces(string text, int words) => Assert.Equal(words, ReadingGrade.WordsOf(text).Count);

    [Fact]
    public void A_number_has_a_beat_for_each_digit() => Assert.Equal(new(2, 1, 3), ReadingGrade.Of(["50 kg"]));

    [Fact]
    public void No_words_have_no_grade() =>
        Assert.Equal((0, 0.0), (ReadingGrade.Of(["", "..."]).Words, ReadingGrade.Of([]).Grade));
}
