using Academy.Modules;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>A senior judges the questions of a module between two dogs, and sees the others only after giving hers.</summary>
public sealed class JudgingWalk(Stage stage)
{
    private const string Name = "blades-and-scissors";
    private const string Asked = "Of ten groomers only just safe to work alone, how many answer this rightly?";

    [Theory]
    [InlineData("no script")]
    [InlineData("keyboard")]
    public async Task Every_question_is_judged_looked_over_changed_and_given(string way)
    {
        using var modules = new TestModules().WithOneOfEachKind(Name);
        await using var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        await salon.LetInAsync(salon.Cast.Senior);
        var module = salon.Portal.Services.GetRequiredService<ModuleLibrary>().Find(Name)!.Module;
        var page = await salon.OpenAsync(Device.Of(way));
        var rosa = way == "keyboard" ? Hands.Keyboard(page) : Hands.Mouse(page);
        await SalonPortal.SignInAsync(rosa, salon.Cast.Senior);

        await rosa.FollowAsync("Study");
        await rosa.FollowAsync("Judge the questions");
        await rosa.SeesHeadingAsync("1 module to judge");
        await rosa.FollowAsync("Judge");
        await rosa.SeesHeadingAsync($"Question 1 of {module.Questions.Count}");
        await rosa.PressAsync("Keep this and go on");
        await rosa.SeesAsync("How many of ten: choose a number from 0 to 10");

        for (var number = 1; number <= module.Questions.Count; number++)
        {
            await rosa.SeesHeadingAsync($"Question {number} of {module.Questions.Count}");
            await rosa.SeesAsync(module.Questions[number - 1].Text);
            if (number == 1)
                Assert.Equal([], way == "keyboard" ? await Axe.LookAsync(page) : []);
            await rosa.PickAsync(Asked, "8");
            await rosa.PressAsync("Keep this and go on");
        }

        await rosa.SeesHeadingAsync($"All {module.Questions.Count} questions are judged");
        await rosa.FollowAsync("Change question 2");
        await Expect(page.Locator("[name=OfTen]:checked")).ToHaveValueAsync("8");
        await rosa.PickAsync(Asked, "5");
        await rosa.PressAsync("Keep this and go on");
        await rosa.PressAsync("Give my judgement");

        await rosa.SeesSaidAsync("Your judgement is given.");
        await rosa.SeesHeadingAsync("Fewer than 3 judges: no pass mark of theirs yet");
        await rosa.SeesAsync("yours 5");
    }
}
