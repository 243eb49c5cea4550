using System.Text;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Amounts;

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
        Assert.Equal(29, module.Questions.Count);
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
            new Choice([
                new("Less heat", true),
                new("Less noise", true),
                new("Less water to drink", false),
                new("Less coat", false),
            ]),
            question.Kind
        );
        Assert.Equal("A dryer brings heat and noise [common practice].", question.Explanation);
        Assert.False(question.IsMustKnow);
        Assert.Equal(
            ["towel-13", "towel-16", "towel-22"],
            folder.Load().Modules[0].Questions.Where(asked => asked.IsMustKnow).Select(asked => asked.Id)
        );
    }

    [Fact]
    public void Every_kind_of_question_is_read()
    {
        using var folder = new TestFolder().WithSample();

        Assert.Equal<QuestionKind>(
            [
                new TrueOrFalse(IsTrue: false),
                new InOrder([
                    new("Squeeze the legs by hand", 0),
                    new("Press with the first towel", 1),
                    new("Press with a dry towel", 2),
                    new("Switch on the dryer", 3),
                ]),
                new Number(new(60, Unit.Find("°C")!), Within: 2),
                new Matching(
                    [new("Smooth", "One towel"), new("Double", "Two towels"), new("Wool", "Three towels")],
                    ["One towel", "Two towels", "Three towels", "Ten towels"]
                ),
                new OnPicture(
                    "back.svg",
                    [
                        new(120, 70, "the middle of the back", IsRight: true),
                        new(30, 85, "the left end of the back", IsRight: false),
                        new(210, 85, "the right end of the back", IsRight: false),
                    ]
                ),
            ],
            folder.Load().Modules[0].Questions.TakeLast(5).Select(question => question.Kind)
        );
    }

    [Theory]
    [InlineData("60 °C, within 2 °C", 60, "°C", 2)]
    [InlineData("60°C, within 2", 60, "°C", 2)]
    [InlineData("1/8 in, within 1/32 in", 0.125, "in", 0.03125)]
    [InlineData("3.2 mm, within 0", 3.2, "mm", 0)]
    [InlineData("0,32 cm, within 0,05 cm", 0.32, "cm", 0.05)]
    [InlineData("-5 °C, within 1 °C", -5, "°C", 1)]
    [InlineData("8, within 0", 8, "", 0)]
    [InlineData("40 %, within 5 %", 40, "%", 5)]
    public void A_number_is_read_with_its_unit_and_how_far_off_counts(string written, double value, string unit, double within)
    {
        using var folder = new TestFolder().WithSample("60 °C, within 2 °C", written);

        Assert.Empty(folder.Load().Findings);
        Assert.Equal(
            new Number(new((decimal)value, Unit.Find(unit)!), (decimal)within),
            folder.Load().Modules[0].Questions[26].Kind
        );
    }

    [Fact]
    public void A_picture_that_only_a_question_asks_about_is_served_and_is_part_of_the_edition()
    {
        using var folder = new TestFolder().WithSample();
        using var other = new TestFolder()
            .WithSample()
            .With("towels", "back.svg", TestFolder.SampleBack.Replace("#333", "#444", StringComparison.Ordinal));

        Assert.Empty(folder.Load().Findings);
        Assert.NotNull(folder.Load().FindPicture("towels", "back.svg"));
        Assert.NotEqual(other.Load().Modules[0].Hash, folder.Load().Modules[0].Hash);
    }

    [Fact]
    public void A_sentence_of_a_reason_may_begin_with_a_number()
    {
        using var folder = new TestFolder().WithSample(
            "Because: Rubbing makes knots [common practice].",
            "Because: Rubbing makes knots, and of those we counted\n10. That is the truth [common practice]."
        );

        Assert.Empty(folder.Load().Findings);
        Assert.Contains("10. That is the truth", folder.Load().Modules[0].Questions[6].Explanation, StringComparison.Ordinal);
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

        Assert.Equal("60e1aac0a200fef2d4e69e138e368e9ccf1b239228d3e0f1f13db2db2b747507", folder.Load().Modules[0].Hash);
    }

    [Fact]
    public void Line_endings_and_a_byte_order_mark_do_not_make_another_module()
    {
        using var folder = new TestFolder()
            .With("towels", "module.md", "\uFEFF" + TestFolder.SampleText.ReplaceLineEndings("\r\n"))
            .WithSamplePictures()
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
