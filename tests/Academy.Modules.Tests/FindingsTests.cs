namespace Academy.Modules.Tests;

public class FindingsTests
{
    // what is written instead of what, and the one finding that has to follow
    [Theory]
    [InlineData(
        "name: towels",
        "name: Towels",
        "2: broken: \"name\" has to be small letters a to z, digits and single hyphens, such as heat-stroke."
    )]
    [InlineData(
        "name: towels",
        "name: cloths",
        "2: broken: The name is \"cloths\" but the folder is \"towels\". Make them the same."
    )]
    [InlineData("minutes: 6", "minutes: six", "5: broken: \"minutes\" has to be a whole number from 1 to 90.")]
    [InlineData("minutes: 6\n", "", "2: broken: The key \"minutes\" is missing. Add it.")]
    [InlineData(
        "summary:",
        "sumary: x\nsummary:",
        "4: fault: The key \"sumary\" is not known. Correct it or take it out; known are aims, catch-up-days, edition, minutes, name, opens, refresher-days, renewed-each-spring, review-due, reviewed, safety-critical-since, sources, summary, title."
    )]
    [InlineData(
        "edition: 2",
        "edition: 2\nedition: 3",
        "7: broken: The front matter cannot be read here: Duplicate key edition."
    )]
    [InlineData(
        "safety-critical-since: 1",
        "safety-critical-since: 3",
        "7: broken: \"safety-critical-since\" is 3, but the edition is only 2. It cannot be newer than the edition."
    )]
    [InlineData(
        "opens: [bath, drying-by-hand]",
        "opens: [Bath]",
        "8: broken: A skill under \"opens\" has to be its code: small letters a to z, digits and single hyphens, such as heat-stroke."
    )]
    [InlineData("opens: [bath, drying-by-hand]", "opens: bath", "8: broken: \"opens\" has to be a list with at least one entry.")]
    [InlineData("reviewed: 2026-11-25", "reviewed: 25.11.2026", "9: broken: \"reviewed\" has to be a day such as 2027-11-25.")]
    [InlineData(
        "review-due: 2027-11-25",
        "review-due: 2025-11-25",
        "10: fault: \"review-due\" has to be a later day than \"reviewed\"."
    )]
    [InlineData(
        "refresher-days: 180",
        "refresher-days: 365",
        "11: broken: \"refresher-days\" has to be a whole number from 7 to 180."
    )]
    [InlineData(
        "refresher-days: 180",
        "refresher-days: 180\nrenewed-each-spring: yes",
        "12: broken: \"renewed-each-spring\" has to be true or false."
    )]
    [InlineData(
        "refresher-days: 180",
        "refresher-days: 180\ncatch-up-days: 0",
        "12: broken: \"catch-up-days\" has to be a whole number from 1 to 60."
    )]
    [InlineData(
        "refresher-days: 180",
        "refresher-days: 180\ncatch-up-days: 61",
        "12: broken: \"catch-up-days\" has to be a whole number from 1 to 60."
    )]
    [InlineData(
        "refresher-days: 180",
        "refresher-days: 180\ncatch-up-days: soon",
        "12: broken: \"catch-up-days\" has to be a whole number from 1 to 60."
    )]
    [InlineData(
        "refresher-days: 180",
        "refresher-days: 180\ncatch-up-days: 30",
        "12: hint: \"catch-up-days\" says nothing here: the first edition is a safety change for nobody. Take it out, or raise \"safety-critical-since\"."
    )]
    [InlineData(
        "  - why: Say",
        "  - Why so: Say",
        "13: broken: An aim has to be a short name, a colon and what somebody can do: \"- signs: Say which signs mean stop now\"."
    )]
    [InlineData("  - how: Press", "  - why: Press", "14: broken: The aim \"why\" is there twice. Give each its own short name.")]
    [InlineData("year: 2026, ", "", "18: broken: The key \"year\" is missing. Add it.")]
    [InlineData(
        "https://example.org/house-rules",
        "example.org",
        "18: broken: The link of source 1 has to be a whole address that begins with https://."
    )]
    [InlineData(
        "https://example.org/house-rules",
        "javascript:alert(1)",
        "18: broken: The link of source 1 has to be a whole address that begins with https://."
    )]
    [InlineData(
        "# Quiz",
        "# Questions",
        "Q: broken: There is no quiz. Put a line \"# Quiz\" after the lesson and the questions below it."
    )]
    public void The_front_matter_is_checked_key_by_key(string from, string to, string finding) =>
        AssertFinding(from, to, finding);

    [Theory]
    [InlineData(
        "## towel-05\n",
        "## towel-04\n",
        "84: broken: The short name \"towel-04\" is there twice. Give each question its own."
    )]
    [InlineData(
        "## towel-05\n",
        "## Towel_05\n",
        "84: broken: The short name \"Towel_05\" has to be small letters a to z, digits and single hyphens, such as heat-stroke."
    )]
    [InlineData(
        "## towel-05\n",
        "## towel-05 must know\n",
        "84: broken: A question begins with \"## \", its short name and, where a wrong answer fails the quiz, \"must-know\": \"## heat-01 must-know\".",
        false
    )]
    [InlineData(
        "# Quiz\n",
        "# Quiz\n\nAnswer all.\n",
        "51: broken: This line stands before the first question. Begin a question with \"## \" and its short name."
    )]
    [InlineData(
        "Aim: why\nMay a towel",
        "Aim: wy\nMay a towel",
        "84: broken: The aim \"wy\" is not in the front matter. Write \"Aim: \" and one of its short names."
    )]
    [InlineData("- Right: No\n", "", "84: broken: No option is right. Write at least one \"- Right: \".")]
    [InlineData("- Wrong: Yes, in summer\n", "", "84: broken: There are 1 wrong options; write at least 2.")]
    [InlineData(
        "- Wrong: Yes, in summer\n",
        "- Maybe\n",
        "89: broken: An option begins with \"- Right: \" or \"- Wrong: \", a place on a picture with \"- Right at 120,80: \", a pair with \"- Pair: \".",
        false
    )]
    [InlineData("- Wrong: Yes, in summer\n", "- Wrong: no\n", "84: broken: Two options have the same words.")]
    [InlineData("- Wrong: Yes, in summer\n", "- Wrong:\n", "84: broken: An option has no words.")]
    [InlineData(
        "Because: A towel dries the top. The skin may still be wet [1].\n",
        "",
        "84: broken: There is no reason. Write \"Because: \" and why the right answer is right."
    )]
    [InlineData(
        "May a towel replace drying at the skin?\n",
        "",
        "84: broken: The question has no words. Write it after the line \"Aim: \"."
    )]
    [InlineData(
        "May a towel replace",
        "May **a** towel replace",
        "84: fault: Questions and options are plain words. Take out stars, backticks, links and source marks."
    )]
    [InlineData(
        "May a towel replace drying at the skin?",
        "a a a a a a a a a a a a a a a a a a a a a a a a a a",
        "84: fault: The question has 26 words; 25 are the most. Shorten it."
    )]
    public void The_quiz_is_checked_question_by_question(string from, string to, string finding, bool alone = true) =>
        AssertFinding(from, to, finding, alone);

    // Line 248 is the answer of towel-25, 254 the first step of towel-26, 263 the answer of towel-27.
    [Theory]
    [InlineData(
        "Answer: false",
        "Answer: no",
        "248: broken: An answer is \"true\", \"false\", or a number and how far off still counts: \"Answer: 3.2 mm, within 0.2 mm\"."
    )]
    [InlineData(
        "Answer: false",
        "Answer: false\nAnswer: true",
        "249: broken: There are two answers. Write one line \"Answer: \"."
    )]
    [InlineData(
        "Answer: false",
        "- Right: Yes\n- Wrong: No\n- Wrong: Maybe\nAnswer: false",
        "245: broken: The question asks in several ways: options, an answer. Choose one."
    )]
    [InlineData(
        "2. Press with the first towel\n3. Press with a dry towel\n4.",
        "2.",
        "251: broken: There are 2 steps; write 3 to 6."
    )]
    [InlineData(
        "4. Switch on the dryer",
        "4. Switch on the dryer\n5. Brush\n6. Praise\n7. Rest",
        "251: broken: There are 7 steps; write 3 to 6."
    )]
    [InlineData(
        "3. Press with a dry towel",
        "4. Press with a dry towel",
        "256: broken: This step is the number 3. Number the steps 1, 2, 3 in the right order."
    )]
    [InlineData("3. Press with a dry towel", "3. press with the first towel", "251: broken: Two steps have the same words.")]
    [InlineData("3. Press with a dry towel", "3.", "251: broken: A step has no words.")]
    [InlineData(
        "60 °C, within 2 °C",
        "60 °C",
        "263: broken: An answer is \"true\", \"false\", or a number and how far off still counts: \"Answer: 3.2 mm, within 0.2 mm\"."
    )]
    [InlineData(
        "60 °C, within 2 °C",
        "60 miles, within 2",
        "263: broken: \"60 miles\" cannot be read. Write a number and mm, cm, in, °C, °F, kg, g, lb, ml, l, s, min, h, days, % or nothing."
    )]
    [InlineData(
        "60 °C, within 2 °C",
        "60 °C, within -2 °C",
        "263: broken: \"within -2 °C\" cannot be read. Write a number of 0 or more."
    )]
    [InlineData(
        "60 °C, within 2 °C",
        "60 °C, within 4 °F",
        "263: broken: Write how far off still counts in the unit of the answer."
    )]
    [InlineData("- Pair: Wool = Three towels\n", "", "266: broken: There are 2 pairs; write 3 to 6.")]
    [InlineData(
        "- Pair: Wool = Three towels",
        "- Pair: Wool",
        "271: broken: A pair has an equals sign with spaces between its two sides, once: \"- Pair: No. 10 = 1.5 mm\"."
    )]
    [InlineData(
        "- Pair: Wool = Three towels",
        "- Pair: Wool = three = towels",
        "271: broken: A pair has an equals sign with spaces between its two sides, once: \"- Pair: No. 10 = 1.5 mm\"."
    )]
    [InlineData("- Pair: Wool = Three towels", "- Pair: Wool =", "266: broken: A side of a pair has no words.")]
    [InlineData("- Pair: Wool = Three", "- Pair: smooth = Three", "266: broken: Two pairs have the same left side.")]
    [InlineData(
        "- Spare: Ten towels",
        "- Spare: two towels",
        "266: broken: Two right-hand sides are the same. Each fits one left side only."
    )]
    [InlineData(
        "- Spare: Ten towels",
        "- Spare: Ten towels\n- Spare: Nine towels\n- Spare: Eight towels",
        "274: broken: There are 3 lines \"- Spare: \"; 2 are the most."
    )]
    [InlineData(
        "Picture: back.svg\n",
        "",
        "275: broken: A question on a picture has one line \"Picture: \" and the name of the file."
    )]
    [InlineData(
        "Picture: back.svg",
        "Picture: ../../etc/passwd",
        "275: broken: No sound picture \"../../etc/passwd\" lies beside the text. Put it there, or correct the name after \"Picture: \".",
        false
    )]
    [InlineData(
        "- Wrong at 210,85: the right end of the back\n",
        "",
        "278: broken: There are 1 right and 1 wrong places; write one \"- Right at x,y: \" and two to five \"- Wrong at x,y: \"."
    )]
    [InlineData(
        "- Wrong at 210,85",
        "- Right at 210,85",
        "278: broken: There are 2 right and 1 wrong places; write one \"- Right at x,y: \" and two to five \"- Wrong at x,y: \"."
    )]
    [InlineData(
        "at 210,85",
        "at the right",
        "281: broken: The place \"the right\" is not two numbers of the picture's own units, such as 120,80."
    )]
    [InlineData("the right end of the back", "the left end of the back", "275: broken: Two places have the same words.")]
    [InlineData(
        "at 210,85",
        "at 230,85",
        "275: fault: The place 230,85 is outside the picture or too near to its edge. Keep 15 of its units away from each edge."
    )]
    [InlineData(
        "at 210,85",
        "at 50,85",
        "275: fault: The places 30,85 and 50,85 are too near to each other for a fingertip. Keep 30 units between them."
    )]
    [InlineData(
        "- Spare: Ten towels",
        "- Spare: **Ten** towels",
        "266: fault: Questions and options are plain words. Take out stars, backticks, links and source marks."
    )]
    public void Each_kind_of_question_is_checked(string from, string to, string finding, bool alone = true) =>
        AssertFinding(from, to, finding, alone);

    // The viewBox may begin anywhere: places are in its units.
    [Fact]
    public void A_place_counts_from_where_the_units_of_the_picture_begin()
    {
        using var folder = new TestFolder()
            .WithSample()
            .With("towels", "back.svg", TestFolder.SampleBack.Replace("0 0 240 120", "100 40 240 120", StringComparison.Ordinal));

        Assert.Equal((100, 40), folder.Load().FindPicture("towels", "back.svg")!.Origin);
        Assert.Equal(
            [
                "towels/module.md:275: fault: The place 30,85 is outside the picture or too near to its edge. Keep 15 of its units away from each edge.",
            ],
            folder.Load().Findings.Select(finding => finding.ToString())
        );
    }

    [Fact]
    public void A_question_of_25_words_is_not_too_long()
    {
        using var folder = new TestFolder().WithSample(
            "May a towel replace drying at the skin?",
            string.Join(' ', Enumerable.Repeat("a", 25))
        );

        Assert.Empty(folder.Load().Findings);
    }

    [Fact]
    public void A_quiz_needs_questions_enough_to_draw_from()
    {
        var short_ = TestFolder
            .SampleText[..TestFolder.SampleText.IndexOf("## towel-21", StringComparison.Ordinal)]
            .Replace("## towel-02\n", "## towel-02 must-know\n", StringComparison.Ordinal)
            .Replace("## towel-03\n", "## towel-03 must-know\n", StringComparison.Ordinal)
            .Replace("## towel-04\n", "## towel-04 must-know\n", StringComparison.Ordinal);
        using var folder = new TestFolder()
            .With("towels", "module.md", short_)
            .With("towels", "press.svg", TestFolder.SamplePicture);

        Assert.Equal(
            [
                "towels/module.md:16: fault: The aim \"clean\" has 2 questions; write at least 3.",
                "towels/module.md:49: fault: The quiz has 20 questions; write at least 24.",
                "towels/module.md:49: fault: 15 questions are not must-know; write at least 16, because a quiz asks 20 and at most 4 of them are must-know.",
            ],
            folder.Load().Findings.Select(finding => finding.ToString())
        );
    }

    [Theory]
    [InlineData(
        "# Towels: dry first",
        "# Cloths: dry first",
        "21: fault: The heading is not the title of the front matter, \"Towels: dry first, blow later\". Make them the same."
    )]
    [InlineData(
        "# Towels: dry first, blow later\n",
        "",
        ": fault: The lesson has to begin with its title: \"# \" and the same words as in the front matter."
    )]
    [InlineData(
        "## After the dog",
        "# After the dog",
        "45: fault: Headings inside a lesson have two or three number signs: \"## \" or \"### \"."
    )]
    [InlineData("[!CAUTION]", "[!DANGER]", "23: fault: [!DANGER] is not known. Write [!CAUTION] or [!NOTE].")]
    [InlineData(
        "less noise [1].",
        "less noise [1] [2].",
        "28: fault: Source [2] is not in the front matter. Add it under \"sources\" or correct the number."
    )]
    [InlineData(
        "few minutes [common practice]",
        "few minutes [common practise]",
        "28: fault: A square bracket is left over. They are for [1], [common practice] and links."
    )]
    [InlineData(
        "lifts it. It does not rub.](press.svg)",
        "](rub.svg)",
        "32: fault: The picture \"rub.svg\" is left out: no sound picture of that name lies beside the text.",
        false
    )]
    [InlineData(
        "![A hand presses a towel on a wet back, then lifts it. It does not rub.]",
        "![]",
        "32: fault: The picture \"press.svg\" has no words for those who cannot see it. Write them: ![words](press.svg)."
    )]
    [InlineData(
        "![A hand presses a towel on a wet back, then lifts it. It does not rub.](press.svg)\n",
        "",
        ": fault: The picture \"press.svg\" is not shown in the lesson and no question asks about it. Show it or take it out of the folder."
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the <b>neck</b>.",
        "34: fault: HTML does nothing in a lesson. Use Markdown.",
        false
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the neck. <!-- why? -->",
        "34: fault: HTML does nothing in a lesson. Use Markdown."
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the [neck](javascript:alert(1)).",
        "34: fault: The link to \"javascript:alert(1)\" is taken out. A link begins with https://, / or #."
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the neck.\n\n[neck]: https://example.org",
        "36: fault: A link is defined on a line of its own. Write it where it is used: [words](https://...)."
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the neck.\n- Right: yes",
        "35: broken: This line of a quiz stands in the lesson. Move it below the line \"# Quiz\"."
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the neck.\n- Pair: neck = first",
        "35: broken: This line of a quiz stands in the lesson. Move it below the line \"# Quiz\"."
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the neck.\n- Right at 1,2: the neck",
        "35: broken: This line of a quiz stands in the lesson. Move it below the line \"# Quiz\"."
    )]
    [InlineData(
        "Wash towels at 60 °C [1].",
        "Wash towels at 60 °C.",
        "47: hint: \"60 °C\" stands here without a source. Add [1] or [common practice]."
    )]
    [InlineData(
        "Begin at the neck.",
        "Begin at the neck, for 2 minutes.",
        "34: hint: \"2 minutes\" stands here without a source. Add [1] or [common practice]."
    )]
    [InlineData(
        "The skin may still be wet [1].",
        "The skin may still be wet [3].",
        "84: fault: Source [3] is not in the front matter. Add it under \"sources\" or correct the number."
    )]
    public void The_lesson_is_checked_line_by_line(string from, string to, string finding, bool alone = true) =>
        AssertFinding(from, to, finding, alone);

    [Fact]
    public void A_source_that_nobody_cites_is_told()
    {
        using var folder = new TestFolder().WithSample(
            "  - { id: 1,",
            "  - { id: 2, organisation: \"Saltmarsh Lane\", title: \"More rules\", year: 2026, link: \"https://example.org/more\" }\n  - { id: 1,"
        );

        Assert.Equal(
            ["towels/module.md:18: fault: Source 2 is never cited. Cite it with [2] or take it out."],
            folder.Load().Findings.Select(finding => finding.ToString())
        );
    }

    [Theory]
    [InlineData("The towel takes 5 minutes [common practice].", false)]
    [InlineData("- 5 minutes\n- 6 minutes", true)]
    [InlineData("The salon's own numbers [common practice]:\n\n- 5 minutes\n- 6 minutes", false)] // a list belongs to its paragraph
    [InlineData("| Coat | Time |\n|---|---|\n| wool | 5 minutes [1] |\n| silky | 3 minutes |", false)] // a table is one statement
    [InlineData("| Coat | Time |\n|---|---|\n| wool | 5 minutes |", true)]
    [InlineData("Use blade #10 on 3 dogs.", false)] // no unit
    [InlineData("Part 3.2 says so.", false)]
    public void A_number_with_a_unit_asks_where_it_comes_from(string text, bool hinted)
    {
        using var folder = new TestFolder().WithSample("Begin at the neck.", $"Begin at the neck.\n\n## More\n\n{text}\n");
        var findings = folder.Load().Findings;

        Assert.Equal(hinted, findings.Any(finding => finding.Severity == Severity.Hint));
        Assert.DoesNotContain(findings, finding => finding.Severity != Severity.Hint);
    }

    [Fact]
    public void A_long_or_hard_lesson_is_told()
    {
        var hard = string.Join(
            ' ',
            Enumerable.Repeat("Approximately everybody considerably underestimates evaporation temperatures immediately.", 180)
        );
        using var folder = new TestFolder().WithSample(
            "Begin at the neck.",
            string.Join("\n\n", hard.Chunk(3000).Select(part => new string(part)))
        );
        var findings = folder.Load().Findings;

        Assert.Equal(2, findings.Count);
        Assert.Contains(findings, finding => finding.Message.StartsWith("The lesson has 13", StringComparison.Ordinal));
        Assert.Contains(
            findings,
            finding => finding.Message.StartsWith("The lesson reads at grade 40", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_file_that_has_no_place_in_a_module_is_told()
    {
        using var folder = new TestFolder().WithSample().With("towels", "notes.txt", "later").With("towels", "photo.jpeg", "x");

        Assert.Equal(
            [
                "towels/notes.txt: fault: A module's folder holds module.md and its pictures (.svg, .png, .jpg, .webp), nothing else. Take this out.",
                "towels/photo.jpeg: fault: A module's folder holds module.md and its pictures (.svg, .png, .jpg, .webp), nothing else. Take this out.",
            ],
            folder.Load().Findings.Select(finding => finding.ToString())
        );
    }

    [Theory]
    [InlineData("", 0, "Modules that can be served: 1. To put right: 0. Hints: 0.")]
    [InlineData("for 2 minutes", 0, "Modules that can be served: 1. To put right: 0. Hints: 1.")]
    [InlineData("<b>", 1, "Modules that can be served: 1. To put right: 1. Hints: 0.")]
    [InlineData("\u0007", 1, "Modules that can be served: 0. To put right: 1. Hints: 0.")]
    public void The_check_fails_for_all_but_hints(string addition, int exitCode, string lastLine)
    {
        using var folder = new TestFolder().WithSample("Begin at the neck.", $"Begin at the neck {addition}.");
        using StringWriter output = new();

        Assert.Equal(exitCode, CheckModules.Run(folder.Root, output));
        Assert.Equal(lastLine, output.ToString().TrimEnd().Split(Environment.NewLine)[^1]);
    }

    // The guide for authors names every key that the reader knows: the list is the reader's own.
    [Fact]
    public void The_guide_for_authors_explains_every_key()
    {
        using var folder = new TestFolder().WithSample("summary:", "sumary: x\nsummary:");
        var known = Assert.Single(folder.Load().Findings).Message.Split("known are ")[1].TrimEnd('.').Split(", ");
        var guide = File.ReadAllText(Path.Combine(Repository.Folder("modules"), "README.md"));

        Assert.Equal(14, known.Length);
        Assert.All(known, key => Assert.Matches($"(?m)^\\|.*`{key}`.*\\|.*\\|$", guide));
    }

    private static void AssertFinding(string from, string to, string finding, bool alone = true)
    {
        using var folder = new TestFolder().WithSample(from, to);
        var last = TestFolder.SampleText.Replace(from, to, StringComparison.Ordinal).Split('\n').Length;
        var expected =
            $"towels/module.md{(finding.StartsWith(':') ? "" : ":")}{finding.Replace("Q:", $"{last}:", StringComparison.Ordinal)}";
        var findings = folder.Load().Findings.Select(found => found.ToString()).ToArray();

        if (alone)
            Assert.Equal([expected], findings);
        else
            Assert.Contains(expected, findings);
    }
}
