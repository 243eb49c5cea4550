using System.Collections.Immutable;
using Academy.Modules.Comparing;
using Academy.Modules.Parcels;

namespace Academy.Modules.Tests.Comparing;

public class EditionComparisonTests
{
    private static readonly ModuleFiles Towels = new(
        "towels",
        TestFolder.SampleText,
        ImmutableSortedDictionary<string, ReadOnlyMemory<byte>>.Empty
    );

    [Fact]
    public void A_text_is_the_same_as_itself_wherever_its_lines_are_broken()
    {
        Assert.True(EditionComparison.Of(Towels, Towels).IsSame);
        Assert.True(EditionComparison.Of(Towels, Changed("Begin at the neck.", "Begin at\nthe neck.")).IsSame);
        Assert.True(EditionComparison.Of(Towels, Towels with { Text = Towels.Text.ReplaceLineEndings("\r\n") }).IsSame);
    }

    [Fact]
    public void Within_a_changed_line_the_words_that_differ_are_told_apart()
    {
        var compared = EditionComparison.Of(Towels, Changed("Begin at the neck.", "Begin at the tail."));

        var line = Assert.Single(compared.Lesson, line => line.Change == Change.Changed);
        Assert.Equal(["neck"], line.Before.Where(piece => piece.IsChanged).Select(piece => piece.Words.Trim('.')));
        Assert.Equal(["tail"], line.After.Where(piece => piece.IsChanged).Select(piece => piece.Words.Trim('.')));
        Assert.Contains("Begin at the neck.", string.Concat(line.Before.Select(piece => piece.Words)), StringComparison.Ordinal);
        Assert.All(compared.Questions, question => Assert.Equal(Change.Same, question.Change));
        Assert.False(compared.IsSame);
    }

    [Fact]
    public void Questions_are_found_by_their_short_names_wherever_they_stand()
    {
        var text = Towels.Text;
        var (first, second) = (
            text.IndexOf("\n## towel-01", StringComparison.Ordinal),
            text.IndexOf("\n## towel-02", StringComparison.Ordinal)
        );
        var moved = Towels with { Text = text[..first] + text[second..].TrimEnd('\n') + "\n" + text[first..second] };
        var gone = Towels with { Text = text[..first] + text[second..] };

        Assert.True(EditionComparison.Of(Towels, moved).IsSame);
        Assert.Equal(
            ["towel-01"],
            EditionComparison.Of(Towels, gone).Questions.Where(one => one.Change == Change.Removed).Select(one => one.Id)
        );
        Assert.Equal(
            ["towel-01"],
            EditionComparison.Of(gone, Towels).Questions.Where(one => one.Change == Change.Added).Select(one => one.Id)
        );
        Assert.Equal(
            ["towel-01"],
            EditionComparison
                .Of(Towels, Changed("What does a towel save?", "What does it save?"))
                .Questions.Where(one => one.Change == Change.Changed)
                .Select(one => one.Id)
        );
    }

    [Fact]
    public void The_words_of_a_question_are_a_line_of_their_own()
    {
        var compared = EditionComparison.Of(Towels, Changed("What does a towel save?", "What does it save?"));

        Assert.Equal(
            "What does it save?",
            string.Concat(
                compared
                    .Questions.Single(one => one.Change == Change.Changed)
                    .Lines.Single(line => line.Change == Change.Changed)
                    .After.Select(piece => piece.Words)
            )
        );
    }

    [Fact]
    public void A_new_key_of_the_front_matter_is_an_added_line()
    {
        var compared = EditionComparison.Of(Towels, Changed("minutes: 6", "minutes: 6\ncatch-up-days: 30"));

        var line = Assert.Single(compared.About, line => line.Change != Change.Same);
        Assert.Equal((Change.Added, 0, "catch-up-days: 30"), (line.Change, line.Before.Count, line.After[0].Words));
    }

    [Fact]
    public void Pictures_are_compared_byte_by_byte()
    {
        var compared = EditionComparison.Of(
            With(("a.svg", 1), ("b.svg", 2), ("c.svg", 3)),
            With(("b.svg", 2), ("c.svg", 4), ("d.svg", 5))
        );

        Assert.Equal(
            [new("a.svg", Change.Removed), new("b.svg", Change.Same), new("c.svg", Change.Changed), new("d.svg", Change.Added)],
            compared.Pictures
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("no fences at all")]
    [InlineData("---\nname: towels")]
    [InlineData("# Quiz\n## \n## a b c\nAim:")]
    public void A_text_that_cannot_be_read_yet_is_compared_as_well(string text)
    {
        var broken = Towels with { Text = text };

        Assert.False(EditionComparison.Of(Towels, broken).IsSame);
        Assert.True(EditionComparison.Of(broken, broken).IsSame);
    }

    private static ModuleFiles Changed(string from, string to)
    {
        Assert.Contains(from, Towels.Text, StringComparison.Ordinal);
        return Towels with { Text = Towels.Text.Replace(from, to, StringComparison.Ordinal) };
    }

    private static ModuleFiles With(params (string File, byte Content)[] pictures) =>
        Towels with
        {
            Pictures = pictures.ToImmutableSortedDictionary(
                picture => picture.File,
                picture => (ReadOnlyMemory<byte>)new[] { picture.Content },
                StringComparer.Ordinal
            ),
        };
}
