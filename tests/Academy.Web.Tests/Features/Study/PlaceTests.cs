using System.Net;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Study;

/// <summary>The place at which somebody stopped reading, kept for the next device.</summary>
public sealed class PlaceTests
{
    private const string Blades = "blades-and-scissors";
    private const string Page = $"/study/{Blades}";
    private const string Place = "#place";

    [Fact]
    public async Task Another_device_goes_on_where_the_first_one_stopped_without_a_script()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var tablet = await portal.AsAsync(cast, cast.Junior);
        using var phone = await portal.AsAsync(cast, cast.Junior);
        var (part, title) = await LastPartAsync(tablet);
        Assert.DoesNotContain("You stopped at", (await phone.GetAsync(Page)).Words, StringComparison.Ordinal);

        var kept = await tablet.SendAsync(Page, Place, ("Part", part));
        Assert.Equal($"{Page}#{part}", kept.Location);
        portal.Clock.Advance(TimeSpan.FromHours(3));

        var lesson = await phone.GetAsync(Page);
        Assert.Contains($"You stopped at {title}, 3 hours ago.", lesson.Words, StringComparison.Ordinal);
        Assert.NotNull(lesson.Page.QuerySelector($"a[href='{Page}#{part}']"));
        var study = await phone.GetAsync("/study");
        Assert.Contains("Go on where you were", study.Words, StringComparison.Ordinal);
        Assert.NotNull(study.Page.QuerySelector($"a[href='{Page}#{part}']"));
    }

    [Fact]
    public async Task While_somebody_reads_the_page_keeps_it_and_wants_no_answer()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var (part, _) = await LastPartAsync(pim);

        var kept = await pim.SendAsync(Page, Place, ("Part", part), ("IsQuiet", "true"));

        Assert.Equal(HttpStatusCode.NoContent, kept.Status);
        Assert.Contains("You stopped at", (await pim.GetAsync(Page)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_beginning_and_a_module_taken_since_ask_nobody_to_go_on()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var lesson = await pim.GetAsync(Page);
        var first = lesson.Page.QuerySelector("#Part option")!.GetAttribute("value")!;
        var (part, _) = await LastPartAsync(pim);

        await pim.SendAsync(Page, Place, ("Part", first));
        Assert.DoesNotContain("Go on where you were", (await pim.GetAsync("/study")).Words, StringComparison.Ordinal);
        await pim.SendAsync(Page, Place, ("Part", part));
        Assert.Contains("Go on where you were", (await pim.GetAsync("/study")).Words, StringComparison.Ordinal);
        portal.Clock.Advance(TimeSpan.FromHours(1));
        await Calendars.CalendarTests.PassAsync(portal, cast, cast.Junior);

        Assert.DoesNotContain("Go on where you were", (await pim.GetAsync("/study")).Words, StringComparison.Ordinal);
        Assert.DoesNotContain("You stopped at", (await pim.GetAsync(Page)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_part_that_is_not_there_is_not_kept_and_nobody_sees_another_s_place()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var juno = await portal.AsAsync(cast, cast.SecondJunior);
        var (part, _) = await LastPartAsync(pim);

        var nowhere = await pim.SendAsync(Page, Place, ("Part", "<script>"));
        await pim.SendAsync(Page, Place, ("Part", part));

        Assert.Equal(HttpStatusCode.NotFound, nowhere.Status);
        Assert.DoesNotContain("You stopped at", (await juno.GetAsync(Page)).Words, StringComparison.Ordinal);
        var version = await portal.DoAsync<RecordBook, long>(book => book.VersionAsync(cast.Salon, default));
        await pim.SendAsync(Page, Place, ("Part", part));
        Assert.Equal(version, await portal.DoAsync<RecordBook, long>(book => book.VersionAsync(cast.Salon, default)));
    }

    private static async Task<(string Part, string Title)> LastPartAsync(Visitor visitor)
    {
        var last = (await visitor.GetAsync(Page)).Page.QuerySelectorAll("#Part option")[^1];
        return (last.GetAttribute("value")!, last.TextContent);
    }
}
