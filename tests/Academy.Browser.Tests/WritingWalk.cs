using System.Text.RegularExpressions;
using Academy.Competence.People;
using Academy.Modules;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using SkiaSharp;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>A module from the first word that a senior writes to the quiz that a junior sits on it.</summary>
public sealed class WritingWalk(Stage stage)
{
    private const string Module = "blades-and-scissors";
    private const string Field = "The text";
    private const string Mended = "1. Begin at the tail, while it drips.";

    [Theory]
    [InlineData("keyboard")]
    [InlineData("no script")]
    public async Task A_senior_writes_the_owner_gives_back_the_senior_mends_the_owner_publishes_and_a_junior_studies(string way)
    {
        using var modules = new TestModules().WithOptionsOnly(Module);
        await using var salon = await OpenAsync(modules);
        var (rosa, ines, pim) = (await salon.HandsAsync(way), await salon.HandsAsync(way), await salon.HandsAsync(way));

        await SalonPortal.SignInAsync(rosa, salon.Cast.Senior);
        await rosa.FollowAsync("Study");
        await rosa.FollowAsync("Write and change modules");
        await rosa.PressAsync($"Change {TestModules.Title}");
        await rosa.SeesHeadingAsync(TestModules.Title);
        await WriteAsync(rosa, way, ("1. Begin at the neck.", "1. Begin at the tail [9]."));
        await rosa.SeesAsync("1 thing has to be put right");
        await MendAsync(rosa, way, "1. Begin at the tail [9].", "1. Begin at the tail.");
        await rosa.SeesAsync("Nothing has to be put right");

        await rosa.PressAsync("See to its pictures");
        await rosa.Page.GetByLabel("Picture", new() { Exact = true }).SetInputFilesAsync(Photo());
        await rosa.PressAsync("Take it in");
        await rosa.SeesSaidAsync("wet-back.jpg is taken in, 1600 by 1000,");
        await rosa.FollowAsync("Write ");
        await WriteAsync(rosa, way, ("## After the dog", "![A wet back from above](wet-back.jpg)\n\n## After the dog"));
        await Expect(rosa.Page.GetByAltText("A wet back from above")).ToBeVisibleAsync();
        await rosa.PressAsync("Finish it, and ask Ines to read it");
        await rosa.TypeAsync("What changed", "From the tail, with a photo.");
        await rosa.PickAsync("What kind of change", "Better words only");
        await rosa.PressAsync("Ask for it to be read");
        await rosa.SeesSaidAsync("Ines can read it now");

        await SalonPortal.SignInAsync(ines, salon.Cast.Owner);
        await ines.SeesAsync("1 module waits for you to read over");
        await ines.FollowAsync("Read");
        await ines.SeesAsync("From the tail, with a photo.");
        await ines.TypeAsync("What to change", "Say how wet.");
        await ines.PressAsync("Give it back to Rosa");
        await ines.SeesSaidAsync("It is back with Rosa");

        await rosa.GoAsync("/");
        await rosa.FollowAsync("Mend");
        await rosa.SeesAsync("Ines gave it back: Say how wet.");
        await WriteAsync(rosa, way, ("1. Begin at the tail.", Mended));
        await rosa.PressAsync("Finish it, and ask Ines to read it");
        await rosa.PressAsync("Ask for it to be read");
        await rosa.SeesSaidAsync("Ines can read it now");

        await ines.GoAsync("/");
        await ines.FollowAsync("Read");
        await ines.SeesAsync("while it drips");
        Assert.Equal([], await Axe.WalkAsync(ines.Page, way));
        await ines.PressAsync("Publish it");
        await ines.SeesSaidAsync("It is published");

        await SalonPortal.SignInAsync(pim, salon.Cast.Junior);
        await pim.FollowAsync("Study");
        await pim.FollowAsync("Read the module");
        await pim.SeesAsync("while it drips");
        await Expect(pim.Page.GetByAltText("A wet back from above")).ToBeVisibleAsync();
        await pim.PressAsync("Take the quiz");
        var lesson = salon.Portal.Services.GetRequiredService<ModuleLibrary>().Find(Module)!;
        await StudyWalk.AnswerAllAsync(pim, lesson, slips: false);
        await pim.PressAsync("Hand in");
        await Expect(pim.Heading).ToContainTextAsync("Passed.");
    }

    [Fact]
    public async Task What_was_typed_is_still_there_after_a_reload_and_after_somebody_was_signed_out()
    {
        using var modules = new TestModules().With(Module);
        await using var salon = await OpenAsync(modules);
        var rosa = await salon.HandsAsync("keyboard");
        await SalonPortal.SignInAsync(rosa, salon.Cast.Senior);
        await rosa.GoAsync("/modules");
        await rosa.PressAsync($"Change {TestModules.Title}");
        var area = rosa.Page.GetByLabel(Field, new() { Exact = true });
        await WriteAsync(rosa, "keyboard", ("1. Begin at the neck.", "1. Begin at the ears."));

        await rosa.Page.ReloadAsync();
        await rosa.SeesAsync("What you typed on this device and did not save is filled in again.");
        await Expect(area).ToHaveValueAsync(Holding("Begin at the ears"));

        await rosa.Page.Context.SetOfflineAsync(true);
        await WriteAsync(rosa, "keyboard", ("Begin at the ears", "Begin at the paws"));
        await rosa.SeesAsync("There is no connection. What you type is kept on this device.");
        await rosa.Page.Context.SetOfflineAsync(false);

        await rosa.Page.Context.ClearCookiesAsync();
        await rosa.PressAsync("Save");
        await Expect(rosa.Page).ToHaveURLAsync(new Regex("/sign-in"));
        await SalonPortal.SignInAsync(rosa, salon.Cast.Senior);
        await rosa.GoAsync($"/modules/{Module}/write");
        await Expect(area).ToHaveValueAsync(Holding("Begin at the paws"));
        await rosa.PressAsync("Save");
        await rosa.SeesSaidAsync("It is saved.");
        await rosa.Page.ReloadAsync();
        await Expect(rosa.Page.Locator("#kept")).ToBeHiddenAsync();
        await Expect(area).ToHaveValueAsync(Holding("Begin at the paws"));
    }

    [Fact]
    public async Task What_was_typed_on_this_device_meets_what_somebody_saved_meanwhile()
    {
        using var modules = new TestModules().With(Module);
        await using var salon = await OpenAsync(modules);
        var (rosa, ines) = (await salon.HandsAsync("keyboard"), await salon.HandsAsync("keyboard"));
        await SalonPortal.SignInAsync(rosa, salon.Cast.Senior);
        await SalonPortal.SignInAsync(ines, salon.Cast.Owner);
        await rosa.GoAsync("/modules");
        await rosa.PressAsync($"Change {TestModules.Title}");
        await WriteAsync(rosa, "keyboard", ("1. Begin at the neck.", "1. Begin at the ears."));
        await ines.GoAsync($"/modules/{Module}/write");
        await WriteAsync(ines, "keyboard", ("1. Begin at the neck.", "1. Begin at the paws."));
        await ines.PressAsync("Save");
        await ines.SeesSaidAsync("It is saved.");

        await rosa.Page.ReloadAsync();
        await rosa.SeesAsync("Somebody saved this module meanwhile: saving yours shows both.");
        await rosa.PressAsync("Save");

        await rosa.SeesAsync("Ines saved this");
        await Expect(rosa.Page.GetByLabel("What you typed", new() { Exact = true })).ToHaveValueAsync(Holding("at the ears"));
        await Expect(rosa.Page.Locator("#other")).ToHaveValueAsync(Holding("at the paws"));
        await rosa.PressAsync("Go on from that");
        await Expect(rosa.Page.GetByLabel("The text to go on from")).ToHaveValueAsync(Holding("at the paws"));
        await Expect(rosa.Page.Locator("#other")).ToHaveValueAsync(Holding("at the ears"));
    }

    private async Task<SalonPortal> OpenAsync(TestModules modules)
    {
        var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        var cast = salon.Cast;
        await salon.Portal.KeepAsync(
            cast.Salon,
            Staffing.Describe(cast.Senior with { WritesModules = true }, cast.Senior, cast.Owner, owners: 1),
            cast.Owner
        );
        await salon.LetInAsync(cast.Owner, cast.Senior, cast.Junior);
        return salon;
    }

    /// <summary>Puts the whole text into the field with a piece of it replaced, as somebody pastes it; then looks at it.</summary>
    private static async Task WriteAsync(Hands writer, string way, (string From, string To) change)
    {
        var area = writer.Page.GetByLabel(Field, new() { Exact = true });
        var text = await area.InputValueAsync();
        Assert.Contains(change.From, text, StringComparison.Ordinal);
        await writer.TypeAsync(Field, "");
        await writer.Page.Keyboard.InsertTextAsync(text.Replace(change.From, change.To, StringComparison.Ordinal));
        await LookAsync(writer, way);
    }

    /// <summary>Goes to the line that the first finding is about and types it anew.</summary>
    private static async Task MendAsync(Hands writer, string way, string wrong, string right)
    {
        if (way == "no script")
        {
            await WriteAsync(writer, way, (wrong, right));
            return;
        }
        await writer.FollowAsync("Line ");
        var selected = await writer.Page.EvaluateAsync<string>(
            "() => { const at = document.activeElement; return at.value.slice(at.selectionStart, at.selectionEnd); }"
        );
        Assert.Equal(wrong, selected);
        await writer.Page.Keyboard.TypeAsync(right);
        await LookAsync(writer, way);
    }

    private static Task LookAsync(Hands writer, string way) =>
        way == "no script" ? writer.PressAsync("Look at it") : Task.CompletedTask;

    private static Regex Holding(string words) => new(words);

    private static FilePayload Photo()
    {
        using SKBitmap bitmap = new(new SKImageInfo(3200, 2000, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(SKColors.CornflowerBlue);
        using var written = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        return new()
        {
            Name = "Wet back.JPG",
            MimeType = "image/jpeg",
            Buffer = written.ToArray(),
        };
    }
}
