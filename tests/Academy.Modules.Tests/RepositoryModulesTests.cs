using Academy.Competence.Skills;

namespace Academy.Modules.Tests;

public class RepositoryModulesTests
{
    private static readonly ModuleLibrary Library = ModuleLibrary.Load(Repository.Folder("modules"));

    [Fact]
    public void Every_module_is_served_and_nothing_is_found_in_any()
    {
        Assert.Empty(Library.Findings.Select(finding => finding.ToString()));
        Assert.Superset(
            new HashSet<string>(["blades-and-scissors", "cooling-clips", "heat-stroke", "muzzle-breaks"]),
            Library.Modules.Select(module => module.Name.Value).ToHashSet()
        );
    }

    // A module may open more: a new salon asks for few, and adds what fits its dogs.
    [Fact]
    public void A_module_opens_every_skill_that_asks_for_it() =>
        Assert.All(
            SkillBook.Defaults.SelectMany(skill => skill.Modules, (skill, module) => (skill.Code, module)),
            asked => Assert.Contains(asked.Code, Library.Find(asked.module.Value)!.Module.Opens)
        );

    [Fact]
    public void A_module_opens_only_skills_that_a_salon_has() =>
        Assert.All(
            Library.Modules.SelectMany(module => module.Opens),
            code => Assert.Contains(SkillBook.Defaults, skill => skill.Code == code)
        );

    [Fact]
    public void Every_module_that_a_skill_asks_for_is_there() =>
        Assert.All(SkillBook.Defaults.SelectMany(skill => skill.Modules), name => Assert.NotNull(Library.Find(name.Value)));

    [Fact]
    public void Every_page_is_safe_and_every_explanation_too() =>
        Assert.All(
            Library.Lessons,
            lesson =>
            {
                SafePage.Assert(lesson.Html);
                SafePage.Assert(lesson.SourcesHtml);
                Assert.All(lesson.Explanations.Values, SafePage.Assert);
                Assert.Equal(lesson.Module.Questions.Count, lesson.Explanations.Count);
            }
        );

    [Fact]
    public void Every_source_mark_leads_to_its_source() =>
        Assert.All(
            Library.Lessons,
            lesson =>
            {
                var page = SafePage.Body(lesson.Html);
                var marks = page.QuerySelectorAll("a.cite").Select(mark => mark.GetAttribute("href")!).ToArray();
                Assert.NotEmpty(marks);
                Assert.All(marks, mark => Assert.NotNull(page.QuerySelector($"li{mark}")));
            }
        );

    [Fact]
    public void No_question_and_no_reason_stands_in_a_lesson() =>
        Assert.All(
            Library.Lessons,
            lesson =>
                Assert.All(
                    lesson.Module.Questions,
                    question =>
                    {
                        Assert.DoesNotContain(question.Text, lesson.Html, StringComparison.Ordinal);
                        Assert.DoesNotContain(question.Explanation, lesson.Html, StringComparison.Ordinal);
                    }
                )
        );

    // Common practice, no published source: where heat, blades or restraint are taught, the page warns and names the vet.
    [Fact]
    public void Every_module_warns_and_defers_to_a_vet() =>
        Assert.All(
            Library.Lessons,
            lesson =>
            {
                var page = SafePage.Body(lesson.Html);
                Assert.NotEmpty(page.QuerySelectorAll("div.caution"));
                Assert.Contains("vet", page.TextContent, StringComparison.Ordinal);
            }
        );

    [Fact]
    public void Every_picture_has_words_and_a_size() =>
        Assert.All(
            Library.Lessons.SelectMany(lesson => SafePage.Body(lesson.Html).QuerySelectorAll("img")),
            picture =>
            {
                Assert.InRange(picture.GetAttribute("alt")!.Length, 20, 400);
                Assert.NotNull(picture.GetAttribute("width"));
                Assert.NotNull(picture.GetAttribute("height"));
            }
        );
}
