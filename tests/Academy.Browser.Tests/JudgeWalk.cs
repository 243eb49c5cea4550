using Academy.Web.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>A sign-off from the preview to the owner's answer: signed, corrected, disputed, answered. Everything stays visible.</summary>
public sealed class JudgeWalk(Stage stage)
{
    [Theory]
    [InlineData("finger")]
    [InlineData("no script")]
    public async Task A_sign_off_shows_what_it_does_is_corrected_disputed_and_answered(string way)
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        var (portal, cast) = (salon.Portal, salon.Cast);
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        var dog = await portal.MeetAsync(cast, "Teasel", "Poodle (Miniature)", "wool");
        var groom = await portal.LogAsync(cast, cast.Junior, cast.Senior, dog);
        await salon.LetInAsync(cast.Owner, cast.Senior, cast.Junior);

        var rosa = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(rosa, cast.Senior);
        await (way == "no script" ? SignsAfterAskingAsync(rosa) : SignsAsync(rosa));
        Assert.Equal(1, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
        await CorrectsAsync(rosa, groom.Id.Value);
        Assert.Equal(0, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);

        var pim = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(pim, cast.Junior);
        await DisputesAsync(pim);

        var ines = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(ines, cast.Owner);
        await AnswersAsync(ines);

        await pim.Page.ReloadAsync();
        await pim.SeesHeadingAsync("Disputed, and taken back");
        await pim.SeesAsync("The tangle was there when he came.");
        await pim.SeesAsync("I looked at the dog with both of you.");
    }

    private static async Task SignsAsync(Hands rosa)
    {
        await rosa.FollowAsync("Sign off");
        await rosa.FollowAsync("Sign off Pim");
        await Expect(rosa.Page.Locator("[data-show]")).ToBeHiddenAsync();
        await Expect(rosa.Page.Locator("#result")).ToContainTextAsync("Before it can be saved");

        await rosa.PickAsync("How much were you needed?", "Talked through");
        await rosa.PickAsync("Finish", "not yet");
        await Expect(rosa.Page.Locator("details[data-when-not-yet]")).ToHaveAttributeAsync("open", "");
        await Expect(rosa.Page.Locator("#result")).ToContainTextAsync("Not complete yet");

        await rosa.PressAsync("All six met");
        await rosa.PickAsync("How much were you needed?", "Stood by, not needed");
        await rosa.PickAsync("You were there", "I watched this groom");
        await Expect(rosa.Page.Locator("#result")).ToContainTextAsync("Suited");
        await Expect(rosa.Page.Locator("#result .effects")).ToContainTextAsync("Wool: suited, 0 to 1 of 17");
        await Expect(rosa.Page.Locator("#result")).Not.ToContainTextAsync("Before it can be saved");
        await rosa.PressAsync("Save this sign-off");
        await rosa.SeesSaidAsync("Pim with Teasel is signed off. Pim sees it at once.");
    }

    private static async Task SignsAfterAskingAsync(Hands rosa)
    {
        await rosa.FollowAsync("Sign off");
        await rosa.FollowAsync("Sign off Pim");
        await rosa.PickAsync("How much were you needed?", "Talked through");
        await rosa.PickAsync("Finish", "not yet");
        await rosa.PressAsync("Show what it will do");
        await Expect(rosa.Page.Locator("#result")).ToContainTextAsync("Not complete yet");
        await Expect(rosa.Page.Locator("details[data-when-not-yet][open]")).ToBeVisibleAsync();

        await rosa.PressAsync("All six met");
        await rosa.PickAsync("How much were you needed?", "Stood by, not needed");
        await rosa.PickAsync("You were there", "I watched this groom");
        await rosa.PressAsync("Show what it will do");
        await Expect(rosa.Page.Locator("#result .effects")).ToContainTextAsync("Wool: suited, 0 to 1 of 17");
        await rosa.PressAsync("Save this sign-off");
        await rosa.SeesSaidAsync("Pim with Teasel is signed off. Pim sees it at once.");
    }

    private static async Task CorrectsAsync(Hands rosa, Guid groom)
    {
        await rosa.GoAsync($"/grooms/{groom}");
        await rosa.FollowAsync("Rosa on Pim");
        await rosa.FollowAsync("Correct this sign-off");
        await rosa.TypeAsync("Why it is corrected", "I had mixed up two dogs of that morning.");
        await rosa.PickAsync("How much were you needed?", "Talked through");
        await rosa.PressAsync("All six met");
        await rosa.TypeAsync("In your words", "Comb to the skin before the bath.");
        await rosa.PickAsync("You were there", "I watched this groom");
        await rosa.PressAsync("Save this sign-off");
        await rosa.SeesSaidAsync("Pim with Teasel is signed off.");
    }

    private static async Task DisputesAsync(Hands pim)
    {
        await pim.SeesAsync("Comb to the skin before the bath.");
        await pim.FollowAsync("Teasel");
        await Expect(pim.Page.Locator("main")).ToContainTextAsync("I had mixed up two dogs of that morning.");
        await pim.Page.Locator("li:not(.replaced) h3 a", new() { HasTextString = "Rosa on Pim" }).ClickAsync();
        await pim.UnfoldAsync("I see it differently");
        await pim.TypeAsync("What you see differently", "The tangle was there when he came.");
        await pim.PressAsync("Dispute it");
        await pim.SeesHeadingAsync("Disputed, waits for the owner's answer");
    }

    private static async Task AnswersAsync(Hands ines)
    {
        await ines.FollowAsync("Decide");
        await ines.Page.Locator("section[aria-labelledby=disputes] a").First.ClickAsync();
        await ines.SeesAsync("The tangle was there when he came.");
        await ines.PickAsync("Does the sign-off stand?", "I take it back");
        await ines.TypeAsync("Your words", "I looked at the dog with both of you.");
        await ines.PressAsync("Answer the dispute");
        await ines.SeesHeadingAsync("Disputed, and taken back");
    }
}
