using System.Text;
using Academy.Competence.Quizzes;

namespace Academy.Modules.Tests;

public class ModuleLibraryTests
{
    [Fact]
    public void A_sound_module_is_read_whole()
    {
        using var folder = new TestFolder().WithSample();
        var library = folder.Load();
        var module = Assert.Single(library.Modules);

        Assert.Empty(library.Findings);
        Assert.Equal(
            ("towels", "Towels: dry first, blow later", "How to take most of the water out of a coat by hand.", 6, 2, 1),
            (module.Name.Value, module.Title, module.Summary, module.Minutes, module.Edition, module.SafetyCriticalSince)
        );
        Assert.Equal([new("bath"), new("drying-by-hand")], module.Opens);
        Assert.Equal(new Aim("why", "Say why a towel comes before a dryer"), module.Aims[0]);
        Assert.Equal(
            [new Source(1, "Saltmarsh Lane, an invented salon", "House rules", 2026, "https://example.org/house-rules")],
            module.Sources
        );
        Assert.Equal(
            (new(2026, 11, 25), new(2027, 11, 25), 180, false),
            (module.ReviewedOn, module.ReviewDueOn, module.RefresherDays, module.RenewedEachSpring)
        );
        Assert.Equal(24, module.Questions.Count);
    }

    [Fact]
    public void A_question_is_read_with_its_options_and_its_reason()
    {
        using var folder = new TestFolder().WithSample();
        var question = folder.Load().Modules[0].Questions[3];

        Assert.Equal(
            ("towel-04", "why", "What does less dryer time mean for the dog?"),
            (question.Id, question.Aim, question.Text)
        );
        Assert.Equal(
            [new("Less heat", true), new("Less noise", true), new("Less water to drink", false), new("Less coat", false)],
            question.Options
        );
        Assert.Equal("A dryer brings heat and noise [common practice].", question.Explanation);
        Assert.True(question.SeveralRight);
        Assert.False(question.IsMustKnow);
        Assert.Equal(
            ["towel-13", "towel-16", "towel-22"],
            folder.Load().Modules[0].Questions.Where(asked => asked.IsMustKnow).Select(asked => asked.Id)
        );
    }

    [Fact]
    public void Renewal_in_spring_is_read()
    {
        using var folder = new TestFolder().WithSample(
            "refresher-days: 180",
            "refresher-days: 90\nrenewed-each-spring: true   # before the warm days"
        );

        Assert.True(Assert.Single(folder.Load().Modules).RenewedEachSpring);
    }

    [Fact]
    public void A_broken_module_never_keeps_the_others_from_being_served()
    {
        using var folder = new TestFolder()
            .With("a-broken", "module.md", "no front matter")
            .WithSample()
            .With("z-empty", "notes.txt", "no module file");

        Assert.Equal(["towels"], folder.Load().Modules.Select(module => module.Name.Value));
        Assert.Equal(
            ["a-broken/module.md", "a-broken/module.md", "z-empty/module.md"],
            folder.Load().Findings.Select(finding => finding.File)
        );
    }

    [Fact]
    public void A_missing_folder_is_told()
    {
        using TestFolder folder = new();
        var library = ModuleLibrary.Load(Path.Combine(folder.Root, "nowhere"));

        Assert.Empty(library.Modules);
        Assert.Equal(
            [new("nowhere", 0, Severity.Broken, "The folder of the modules is missing. Say where it is.")],
            library.Findings
        );
    }

    [Fact]
    public void An_empty_folder_has_no_modules_and_no_findings()
    {
        using TestFolder folder = new();

        Assert.Empty(folder.Load().Modules);
        Assert.Empty(folder.Load().Findings);
    }

    [Fact]
    public void A_lesson_and_its_pictures_are_found_by_name()
    {
        using var folder = new TestFolder().WithSample();
        var library = folder.Load();

        Assert.Same(library.Lessons[0], library.Find("towels"));
        Assert.Null(library.Find("Towels"));
        Assert.Null(library.FindPicture("towels", "other.svg"));
        Assert.Null(library.FindPicture("towels", "../towels/press.svg"));
        var picture = library.FindPicture("towels", "press.svg")!;
        Assert.Equal(("image/svg+xml", 240, 120), (picture.ContentType, picture.Width, picture.Height));
        Assert.Equal(TestFolder.SamplePicture, Encoding.UTF8.GetString(picture.Bytes.Span));
    }

    // Computed with Python's hashlib from the definition beside ContentHash.
    [Fact]
    public void The_hash_is_the_one_that_its_definition_gives()
    {
        using var folder = new TestFolder().WithSample();

        Assert.Equal("a2ffef7a4ce449507419bad74bfe9a368ec8327a8fccc1c13f80caa721e7bf6c", folder.Load().Modules[0].Hash);
    }

    [Fact]
    public void Line_endings_and_a_byte_order_mark_do_not_make_another_module()
    {
        using var folder = new TestFolder()
            .With("towels", "module.md", "\uFEFF" + TestFolder.SampleText.ReplaceLineEndings("\r\n"))
            .With("towels", "press.svg", TestFolder.SamplePicture.ReplaceLineEndings("\r\n"));
        using var plain = new TestFolder().WithSample();

        Assert.Empty(folder.Load().Findings);
        Assert.Equal(plain.Load().Modules[0].Hash, folder.Load().Modules[0].Hash);
    }

    [Theory]
    [InlineData("Begin at the neck.", "Begin at the tail.")] // the lesson
    [InlineData("- Right: Press and lift", "- Right: Press, lift")] // an answer
    [InlineData("edition: 2", "edition: 3")]
    public void A_changed_letter_makes_another_hash(string from, string to)
    {
        using var changed = new TestFolder().WithSample(from, to);
        using var plain = new TestFolder().WithSample();

        Assert.NotEqual(plain.Load().Modules[0].Hash, changed.Load().Modules[0].Hash);
    }

    [Fact]
    public void A_changed_picture_makes_another_hash()
    {
        using var changed = new TestFolder()
            .WithSample()
            .With("towels", "press.svg", TestFolder.SamplePicture.Replace("#333", "#444", StringComparison.Ordinal));
        using var plain = new TestFolder().WithSample();

        Assert.NotEqual(plain.Load().Modules[0].Hash, changed.Load().Modules[0].Hash);
    }

    [Fact]
    public void A_folder_that_begins_with_a_dot_is_no_module()
    {
        using var folder = new TestFolder().With(".draft", "module.md", "not yet").WithSample();

        Assert.Empty(folder.Load().Findings);
    }
}
