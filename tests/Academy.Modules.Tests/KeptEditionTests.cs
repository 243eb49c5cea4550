using Academy.Competence;

namespace Academy.Modules.Tests;

public class KeptEditionTests
{
    private static readonly ModuleName Towels = new("towels");

    [Fact]
    public void A_kept_edition_reads_back_as_the_lesson_it_was()
    {
        using var folder = new TestFolder().WithSample();
        var lesson = folder.Load().Lessons[0];

        var read = KeptEdition.Read(Towels, lesson.Module.Hash, KeptEdition.Of(lesson))!;

        Assert.Equal(lesson.Module, read.Module);
        Assert.Equal(lesson.Html, read.Html);
        Assert.Equal(lesson.SourcesHtml, read.SourcesHtml);
        Assert.Equal(lesson.Parts, read.Parts);
        Assert.Equal(lesson.Explanations, read.Explanations);
        Assert.Equal(["back.svg", "press.svg"], read.Pictures.Keys.Order(StringComparer.Ordinal));
        Assert.All(read.Pictures, kept => Assert.Equal(lesson.Pictures[kept.Key].Bytes.ToArray(), kept.Value.Bytes.ToArray()));
    }

    [Fact]
    public void Every_module_of_the_repository_can_be_kept_and_read_back()
    {
        var lessons = ModuleLibrary.Load(Repository.Folder("modules")).Lessons;

        Assert.NotEmpty(lessons);
        Assert.All(
            lessons,
            lesson =>
                Assert.Equal(
                    lesson.Module,
                    KeptEdition.Read(lesson.Module.Name, lesson.Module.Hash, KeptEdition.Of(lesson))?.Module
                )
        );
    }

    [Theory]
    [InlineData("Press and lift", "Rub hard")] // an answer
    [InlineData("edition: 2", "edition: 3")]
    public void A_text_that_was_changed_afterwards_is_not_the_edition_any_more(string from, string to)
    {
        using var folder = new TestFolder().WithSample();
        var lesson = folder.Load().Lessons[0];
        var kept = KeptEdition.Of(lesson);
        Assert.Contains(from, kept, StringComparison.Ordinal);

        Assert.Null(KeptEdition.Read(Towels, lesson.Module.Hash, kept.Replace(from, to, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_text_that_is_no_module_is_no_edition() =>
        Assert.Null(KeptEdition.Read(Towels, "00", """{"Text":"# Towels","Pictures":{}}"""));
}
