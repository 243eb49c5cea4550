using Academy.Competence.Dogs;
using Academy.Web.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>"Who may groom this dog alone, now?" turns from no to yes by a signature, and from yes to no by an incident; yesterday's answer stays.</summary>
public sealed class DecideWalk(Stage stage)
{
    [Fact]
    public async Task A_signature_makes_it_yes_an_incident_makes_it_no_and_yesterday_stays_as_it_was()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        var (portal, cast) = (salon.Portal, salon.Cast);
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        await portal.WithoutModulesAsync(cast, "bath");
        foreach (var person in (Competence.People.Person[])[cast.Senior, cast.Junior])
            await portal.DeclareAsync(cast, person, "bath");
        var dog = await portal.MeetAsync(cast, "Teasel", "Poodle (Miniature)", "wool");
        await salon.LetInAsync(cast.Owner, cast.Senior);
        var ines = Hands.Mouse(await salon.OpenAsync(Device.Desk));
        await SalonPortal.SignInAsync(ines, cast.Owner);
        await ines.OpenTheDayAsync(cast.Owner, cast.Senior, cast.Junior);

        await ines.AskAsync(dog);
        await ines.SeesHeadingAsync("Teasel: Rosa, alone");
        await IsRefusedAsync(ines);
        await ines.DecideAsync(cast.Junior, "wool");
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        await ines.AskAsync(dog);
        await ines.SeesHeadingAsync("Teasel: Rosa or Pim, alone");

        var yesterday = TimeZoneInfo.ConvertTime(portal.Now, Cast.Zone);
        var groom = await portal.LogAsync(cast, cast.Junior, watcher: null, dog);
        portal.Clock.Advance(TimeSpan.FromDays(1));
        await SalonPortal.SignInAsync(ines, cast.Owner);
        await ines.OpenTheDayAsync(cast.Owner, cast.Senior, cast.Junior);
        await ines.AskAsync(dog);
        await ines.SeesHeadingAsync("Teasel: Rosa or Pim, alone");
        var rosa = Hands.Finger(await salon.OpenAsync(Device.Phone));
        await SalonPortal.SignInAsync(rosa, cast.Senior);
        await ReportsAsync(rosa, groom.Id.Value);
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        await ines.AskAsync(dog);
        await ines.SeesHeadingAsync("Teasel: Rosa, alone");

        await AsksAboutAsync(ines, yesterday);
        await ines.SeesAsync("This is the answer as it was known then. It says nothing about today.");
        await ines.SeesHeadingAsync("Teasel: Rosa or Pim, alone");
    }

    private static async Task IsRefusedAsync(Hands ines)
    {
        await ines.FollowAsync("Decide");
        await ines.FollowAsync("Look and decide");
        await ines.TickAsync("wool");
        await ines.TypeAsync("Your password, as your signature", "not hers at all");
        await ines.PressAsync("Sign");
        await Expect(ines.Page.Locator(".mend")).ToContainTextAsync("this is not yours. Write it once more");
        Assert.Equal([], await Axe.LookAsync(ines.Page));
        await ines.Page.SetViewportSizeAsync(Device.Desk.Width, Device.Desk.Height);
    }

    private static async Task ReportsAsync(Hands rosa, Guid groom)
    {
        await rosa.GoAsync($"/grooms/{groom}");
        await rosa.FollowAsync("Report something");
        await rosa.PickAsync("What was it?", "skin opened through");
        await rosa.PickAsync("How bad for the dog?", "moderate");
        await Expect(rosa.Page.Locator("#result")).ToContainTextAsync("wool");
        await rosa.PickAsync("Where on the dog?", "ear");
        await rosa.PickAsync("Vet", "phoned");
        await rosa.TypeAsync("What happened", "A cut at the edge of the ear.");
        await rosa.TypeAsync("What was done", "Pressed, and phoned the vet.");
        await rosa.PressAsync("Report it");
        await Expect(rosa.Said).ToBeVisibleAsync();
        await rosa.SeesAsync("Critical by the salon’s list.");
    }

    private static async Task AsksAboutAsync(Hands ines, DateTimeOffset moment)
    {
        await ines.UnfoldAsync("Another moment");
        await ines.TypeAsync("Day", $"{moment:yyyy-MM-dd}");
        await ines.TypeAsync("Time", $"{moment:HH:mm}");
        await ines.PressAsync("Who may groom this dog?");
    }
}
