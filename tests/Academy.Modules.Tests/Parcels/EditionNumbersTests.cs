using System.Collections.Immutable;
using Academy.Modules.Parcels;

namespace Academy.Modules.Tests.Parcels;

public class EditionNumbersTests
{
    [Theory]
    [InlineData(
        "---\nname: a\nedition: 1\nsafety-critical-since: 1\n---\n# A",
        "---\nname: a\nedition: 4\nsafety-critical-since: 3\n---\n# A"
    )]
    [InlineData("---\nedition:1\n---\n", "---\nedition: 4\nsafety-critical-since: 3\n---\n")]
    [InlineData("---\n---\n", "---\nedition: 4\nsafety-critical-since: 3\n---\n")] // lines that are missing are put in
    [InlineData("---\nedition : x # first\n---\n", "---\nedition: 4\nsafety-critical-since: 3\n---\n")]
    [InlineData("---\nx: y\n---\nedition: 9\n", "---\nx: y\nedition: 4\nsafety-critical-since: 3\n---\nedition: 9\n")] // the lesson is nobody's key
    [InlineData("no front matter\nedition: 1", "no front matter\nedition: 1")]
    [InlineData("---\nedition: 1", "---\nedition: 1")]
    [InlineData("", "")]
    public void The_numbers_are_written_into_the_front_matter_and_nowhere_else(string text, string written) =>
        Assert.Equal(written, EditionNumbers.Write(text, edition: 4, safetyCriticalSince: 3));

    [Fact]
    public void A_module_written_so_is_that_edition()
    {
        var text = EditionNumbers.Write(TestFolder.SampleText, edition: 7, safetyCriticalSince: 7);

        var (lesson, _) = new ModuleFiles("towels", text, Pictures()).Read();

        Assert.Equal((7, 7), (lesson!.Module.Edition, lesson.Module.SafetyCriticalSince));
    }

    [Fact]
    public void A_new_module_begins_with_a_text_that_can_be_shown_and_lacks_only_more_questions()
    {
        var text = StartingText.For("nail-care", "Nails: \"short\" is a word", new(2026, 11, 25));

        var (lesson, findings) = new ModuleFiles(
            "nail-care",
            text,
            ImmutableSortedDictionary<string, ReadOnlyMemory<byte>>.Empty
        ).Read();

        Assert.Equal("Nails: \"short\" is a word", lesson!.Module.Title);
        Assert.Equal(
            [
                "nail-care/module.md:45: fault: The quiz has 6 questions; write at least 24.",
                "nail-care/module.md:45: fault: 5 questions are not must-know; write at least 16, because a quiz asks 20 and at most 4 of them are must-know.",
            ],
            findings.Select(finding => finding.ToString())
        );
        SafePage.Assert(lesson.Html);
    }

    [Theory]
    [InlineData("Nails: short is a word", "nails-short-is-a-word")]
    [InlineData("Über die Pfoten", "uber-die-pfoten")]
    [InlineData("!!!", "")]
    public void A_module_is_named_by_the_words_of_its_title(string title, string name) =>
        Assert.Equal(name, StartingText.NameFrom(title));

    private static ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Pictures() =>
        ImmutableSortedDictionary<string, ReadOnlyMemory<byte>>
            .Empty.Add("press.svg", System.Text.Encoding.UTF8.GetBytes(TestFolder.SamplePicture))
            .Add("back.svg", System.Text.Encoding.UTF8.GetBytes(TestFolder.SampleBack));
}
