using Academy.Modules.Parcels;
using Academy.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>The owner looks at what changed in a module, goes back to the library's words, and takes a parcel in.</summary>
public sealed class EditionsWalk(Stage stage)
{
    private const string Name = "blades-and-scissors";

    [Theory]
    [InlineData("finger")]
    [InlineData("keyboard")]
    [InlineData("no script")]
    public async Task The_owner_sees_what_changed_and_goes_back_to_the_librarys_edition(string way)
    {
        using var modules = new TestModules().Titled(Name, "Blades");
        await using var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        await salon.LetInAsync(salon.Cast.Owner);
        await salon.Portal.TellEditionsAsync();
        await salon.Portal.PublishAsync(
            salon.Cast,
            Name,
            "Ours begins elsewhere.",
            catchUpDays: null,
            ("Begin at the neck.", "Begin at the tail.")
        );
        var ines = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(ines, salon.Cast.Owner);

        await ines.GoAsync($"/study/{Name}");
        await ines.FollowAsync("Editions, what changed");
        await ines.SeesHeadingAsync("Blades: edition 3");
        await ines.SeesAsync("Ours begins elsewhere.");
        await ines.FollowAsync("What changed in edition 3");
        await Expect(ines.Page.Locator("[aria-labelledby=lesson] del")).ToContainTextAsync("neck");
        await Expect(ines.Page.Locator("[aria-labelledby=lesson] ins")).ToContainTextAsync("tail");
        Assert.Equal([], await Axe.WalkAsync(ines.Page, way));

        await ines.FollowAsync("All editions");
        await ines.FollowAsync("Go back to the library’s edition");
        await ines.PressAsync("Publish it as edition 4");
        await ines.SeesSaidAsync("Edition 4 is the library’s, and in force.");
        await ines.Page.GoBackAsync();
        await ines.SeesSaidAsync("The salon’s edition has the library’s words already.");
        await ines.SeesHeadingAsync("Blades: edition 4");

        await ines.FollowAsync("Who is affected");
        await ines.SeesHeadingAsync("Nobody has anything to do");
    }

    [Theory]
    [InlineData("finger")]
    [InlineData("keyboard")]
    [InlineData("no script")]
    public async Task The_owner_takes_a_parcel_in_and_finds_words_in_the_modules(string way)
    {
        using var modules = new TestModules().Titled(Name, "Blades");
        await using var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        await salon.LetInAsync(salon.Cast.Owner);
        var files = ModuleFiles.Of(salon.Portal.LibraryLesson(Name));
        var parcel = ModuleParcel.Pack([
            files with
            {
                Text = files.Text.Replace("Begin at the neck.", "Begin at the tail.", StringComparison.Ordinal),
            },
        ]);
        var ines = await salon.HandsAsync(way);
        await SalonPortal.SignInAsync(ines, salon.Cast.Owner);

        await ines.GoAsync("/study/parcels");
        await ines
            .Page.GetByLabel("The parcel")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "modules.zip",
                    MimeType = "application/zip",
                    Buffer = parcel,
                }
            );
        await ines.PressAsync("Look into it");
        await ines.SeesHeadingAsync("1 module in the parcel");
        await ines.SeesAsync("in other words than here");
        Assert.Equal([], await Axe.WalkAsync(ines.Page, way));
        await ines.PressAsync("Take what is chosen");
        await ines.SeesSaidAsync("Blades is a draft of yours now.");

        await ines.GoAsync("/study/search");
        await ines.TypeAsync("Words in the modules", "neck");
        await ines.PressAsync("Search");
        await ines.SeesHeadingAsync("Found in 1 module");
        await ines.FollowAsync("Blades");
        await ines.SeesHeadingAsync("Blades");
    }
}
