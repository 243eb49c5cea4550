using Academy.Competence.Dogs;
using Academy.Competence.People;
using Academy.Web.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>The portal's main journeys, each from the first page after sign-in to its last, for any hands.</summary>
internal static class Journeys
{
    /// <summary>Ticks everybody in and reads the room: what the dog check asks for before anything else.</summary>
    public static async Task OpenTheDayAsync(this Hands owner, params IEnumerable<Person> people)
    {
        await owner.GoAsync("/in-today");
        foreach (var person in people)
            await owner.PickAsync("In the building today", person.Name);
        await owner.PressAsync("Keep the list");
        await Expect(owner.Said).ToBeVisibleAsync();
        await owner.GoAsync("/readings/new");
        await owner.TypeAsync("Temperature", "21,5");
        await owner.TypeAsync("Relative humidity", "50");
        await owner.PressAsync("Keep this reading");
        await owner.SeesSaidAsync("21.5 °C is in the book.");
    }

    /// <summary>A junior puts a dog on the table, tells the groom in a few taps, and is shown the story.</summary>
    public static async Task LogAsync(this Hands junior, Dog dog, Person watcher)
    {
        await junior.StartAsync(dog, watcher);
        await junior.PickAsync("How it came", "combed through");
        await junior.PickAsync("What was done", "bath");
        await junior.PressAsync($"Save {dog.Name}");
        await Expect(junior.Heading).ToContainTextAsync($"{dog.Name}, ");
    }

    /// <summary>From the first page to the page on which the groom is told.</summary>
    public static async Task StartAsync(this Hands junior, Dog dog, Person watcher)
    {
        await junior.FollowAsync("Log a groom");
        await junior.TypeAsync("Name, breed or surname", dog.Name);
        await junior.PressAsync("Find");
        await junior.FollowAsync(dog.Name);
        await junior.PickAsync("Who watches?", watcher.Name);
        await junior.PressAsync($"Start {dog.Name} now");
        await junior.SeesHeadingAsync($"Log {dog.Name}");
    }

    /// <summary>A senior signs off the next groom that waits: everything met, never needed.</summary>
    public static async Task SignOffAsync(this Hands senior, Dog dog)
    {
        await senior.FollowAsync("Sign off");
        await senior.FollowAsync("Sign off Pim");
        await senior.PickAsync("How much were you needed?", "Stood by, not needed");
        await senior.PressAsync("All six met");
        await senior.PickAsync("You were there", "I watched this groom");
        await senior.PressAsync("Save this sign-off");
        await Expect(senior.Said).ToContainTextAsync(dog.Name);
    }

    /// <summary>The owner signs what is ready with her password.</summary>
    public static async Task DecideAsync(this Hands owner, Person junior, string skill)
    {
        await owner.FollowAsync("Decide");
        await owner.FollowAsync("Look and decide");
        await owner.SeesHeadingAsync($"{junior.Name} is ready in 1 skill");
        await owner.TickAsync(skill);
        await owner.TypeAsync("Your password, as your signature", SalonPortal.Password);
        await owner.PressAsync("Sign");
        await owner.SeesSaidAsync($"Signed. {junior.Name} may do alone: {skill}.");
    }

    /// <summary>Anybody asks who may do this dog, for a bath.</summary>
    public static async Task AskAsync(this Hands anybody, Dog dog)
    {
        await anybody.FollowAsync("Dog check");
        await anybody.TypeAsync("Name, breed or surname", dog.Name);
        await anybody.PressAsync("Search");
        await anybody.FollowAsync(dog.Name);
        await anybody.PickAsync("What is to be done?", "bath");
        await anybody.PressAsync("Who may groom this dog?");
    }
}
