using Academy.Competence.Dogs;
using Academy.Web.Tests.Hosting;

namespace Academy.Browser.Tests;

/// <summary>
/// One day of a salon, from a groom to a decision that the dog check follows: with a mouse and a finger, by keyboard alone, and with
/// scripts switched off.
/// </summary>
public sealed class DayWalk(Stage stage)
{
    [Theory]
    [InlineData("finger")]
    [InlineData("keyboard")]
    [InlineData("no script")]
    public async Task From_a_groom_to_a_sign_off_to_a_decision_to_the_dog_check(string way)
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        var (portal, cast) = (salon.Portal, salon.Cast);
        await portal.WoolAsync(cast, cast.Junior, marks: 16);
        await portal.WithoutModulesAsync(cast, "bath");
        foreach (var person in (Competence.People.Person[])[cast.Senior, cast.Junior])
            await portal.DeclareAsync(cast, person, "bath");
        var dog = await portal.MeetAsync(cast, "Teasel", "Poodle (Miniature)", "wool");
        await salon.LetInAsync(cast.Owner, cast.Senior, cast.Junior);

        var ines = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(ines, cast.Owner);
        await ines.OpenTheDayAsync(cast.Owner, cast.Senior, cast.Junior);
        await ines.AskAsync(dog);
        await ines.SeesHeadingAsync("Teasel: Rosa, alone");

        var pim = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(pim, cast.Junior);
        await pim.LogAsync(dog, cast.Senior);

        var rosa = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(rosa, cast.Senior);
        await rosa.SignOffAsync(dog);

        await ines.DecideAsync(cast.Junior, "wool");
        await pim.AskAsync(dog);
        await pim.SeesHeadingAsync("Teasel: Rosa or Pim, alone");
    }
}
