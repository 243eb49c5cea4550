using Academy.Competence.People;

namespace Academy.Browser.Tests;

/// <summary>A salon on its first morning: every list is empty, says what will stand there, and is for everybody.</summary>
public sealed class EmptySalonTests(Stage stage)
{
    private static readonly string[] Owners =
    [
        "/",
        "/board",
        "/decide",
        "/dogs",
        "/reviews",
        "/disputes",
        "/ledger",
        "/dog-check",
    ];
    private static readonly string[] Seniors = ["/", "/sign-offs", "/log"];
    private static readonly string[] Juniors = ["/", "/me", "/study", "/log"];

    [Fact]
    public async Task The_pages_of_an_empty_salon_are_for_everybody()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        await salon.LetInAsync(salon.Cast.Owner, salon.Cast.Senior, salon.Cast.Junior);

        Assert.Empty(await LookAsync(salon, salon.Cast.Owner, Owners));
        Assert.Empty(await LookAsync(salon, salon.Cast.Senior, Seniors));
        Assert.Empty(await LookAsync(salon, salon.Cast.Junior, Juniors));
    }

    private static async Task<List<string>> LookAsync(SalonPortal salon, Person person, string[] paths)
    {
        var hands = Hands.Mouse(await salon.OpenAsync(Device.Desk));
        await SalonPortal.SignInAsync(hands, person);
        List<string> wrong = [];
        foreach (var path in paths)
        {
            await hands.GoAsync(path);
            wrong.AddRange((await Axe.LookAsync(hands.Page)).Select(found => $"{person.Name} {path}: {found}"));
        }
        return wrong;
    }
}
