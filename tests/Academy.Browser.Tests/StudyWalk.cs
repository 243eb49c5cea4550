using System.Text.RegularExpressions;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>A junior between two dogs: reads, fails a must-know, learns why, waits, and passes.</summary>
public sealed partial class StudyWalk(Stage stage)
{
    private const string Name = "blades-and-scissors";

    [Theory]
    [InlineData("finger")]
    [InlineData("keyboard")]
    [InlineData("no script")]
    public async Task A_wrong_must_know_fails_the_quiz_explains_itself_and_has_to_wait(string way)
    {
        using var modules = new TestModules().WithOptionsOnly(Name);
        await using var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        await salon.LetInAsync(salon.Cast.Junior);
        var lesson = salon.Portal.Services.GetRequiredService<ModuleLibrary>().Find(Name)!;
        var pim = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(pim, salon.Cast.Junior);

        await pim.FollowAsync("Study");
        await pim.FollowAsync("Read the module");
        await pim.SeesHeadingAsync(lesson.Module.Title);
        await pim.PressAsync("Take the quiz");
        var missed = await AnswerAllAsync(pim, lesson, slips: true);
        await pim.SeesAsync("Handed in, it is an attempt and stays one.");
        await ShowsNoAnswersAsync(pim, lesson);
        await pim.PressAsync("Hand in");

        await Expect(pim.Heading).ToContainTextAsync("one must-know was wrong. Not passed yet.");
        await pim.SeesAsync("It may be taken again from 10:10 today on.");
        var wrong = pim.Page.Locator(".ans.wrong");
        await Expect(wrong).ToHaveCountAsync(1);
        await Expect(wrong.Locator("h3")).ToContainTextAsync(missed!.Text);
        await Expect(wrong.Locator(".because")).ToContainTextAsync(BecauseOf(missed));
        Assert.Equal([], await Axe.WalkAsync(pim.Page, way));

        await pim.FollowAsync("Read the module again");
        await pim.SeesAsync("The quiz may be taken again from 10:10 today on.");
        await Expect(pim.Page.GetByRole(AriaRole.Button, new() { Name = "Take the quiz" })).ToHaveCountAsync(0);

        salon.Portal.Clock.Advance(TimeSpan.FromMinutes(10));
        await pim.Page.ReloadAsync();
        await pim.PressAsync("Take the quiz");
        await AnswerAllAsync(pim, lesson, slips: false);
        await pim.PressAsync("Hand in");
        await Expect(pim.Heading).ToContainTextAsync("Passed.");
        await Expect(pim.Page.Locator(".ans.wrong")).ToHaveCountAsync(0);
    }

    /// <summary>Answers one question after another; where it slips, the first must-know is answered wrong.</summary>
    internal static async Task<Question?> AnswerAllAsync(Hands pim, Lesson lesson, bool slips)
    {
        Question? missed = null;
        for (int at = 1, of = 1; at <= of; at++)
        {
            await Expect(pim.Heading).ToHaveTextAsync(new Regex($"^Question {at} of "));
            of = int.Parse(Last().Match((await pim.Heading.TextContentAsync())!).Value, null);
            await ShowsNoAnswersAsync(pim, lesson);
            var question = await AskedAsync(pim, lesson);
            var isSlip = slips && missed is null && question.IsMustKnow;
            missed = isSlip ? question : missed;
            await AnswerAsync(pim, question, isSlip);
            await pim.PressAsync(at == of ? "Keep this and look it over" : "Keep this and go on");
        }
        return missed;
    }

    private static async Task<Question> AskedAsync(Hands pim, Lesson lesson)
    {
        var asked = (await pim.Page.Locator("fieldset legend").First.TextContentAsync())!.Trim();
        return lesson.Module.Questions.Single(question => question.Text == asked);
    }

    private static async Task AnswerAsync(Hands pim, Question question, bool wrongly)
    {
        var options = ((Choice)question.Kind).Options;
        var picks = wrongly ? options.Where(option => !option.IsRight).Take(1) : options.Where(option => option.IsRight);
        foreach (var option in picks)
            await pim.PickAsync(question.Text, option.Text);
    }

    // Neither a reason nor anything in which a right option would differ from a wrong one, but for its own words and number.
    private static async Task ShowsNoAnswersAsync(Hands pim, Lesson lesson)
    {
        var page = await pim.Page.ContentAsync();
        Assert.DoesNotContain(lesson.Module.Questions, question => page.Contains(BecauseOf(question), StringComparison.Ordinal));
        var shapes = await pim.Page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll("label.pick")].map((label) => {
              const bare = label.cloneNode(true);
              for (const one of bare.querySelectorAll("*")) {
                for (const name of ["id", "value", "checked", "aria-describedby"]) one.removeAttribute(name);
                for (const text of [...one.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE)) text.remove();
              }
              return bare.outerHTML;
            })
            """
        );
        Assert.True(shapes.Distinct(StringComparer.Ordinal).Count() <= 1, string.Join(Environment.NewLine, shapes));
    }

    // The words up to the first mark: the page draws marks of sources and of stress in its own way.
    private static string BecauseOf(Question question) => Plain().Match(question.Explanation).Value;

    [GeneratedRegex("[0-9]+$")]
    private static partial Regex Last();

    [GeneratedRegex("[A-Za-z][A-Za-z ,-]{8,}")]
    private static partial Regex Plain();
}
