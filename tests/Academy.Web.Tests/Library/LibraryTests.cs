using System.Net;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Library;
using Academy.Web.Tests.Hosting;
using Academy.Web.Wording;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Library;

/// <summary>The modules as the portal reads them, tells its salons of them and serves their pictures.</summary>
public sealed class LibraryTests
{
    private static readonly ModuleName Blades = new("blades-and-scissors");

    [Fact]
    public void The_modules_of_the_repository_are_found_where_nothing_is_said()
    {
        var folder = ModuleFolder.Of(new ConfigurationBuilder().Build(), AppContext.BaseDirectory);

        Assert.True(File.Exists(Path.Combine(folder, "heat-stroke", "module.md")), folder);
    }

    [Fact]
    public void A_folder_that_is_named_is_taken_even_where_it_is_missing()
    {
        var settings = new ConfigurationBuilder().AddInMemoryCollection([new(ModuleFolder.Setting, "elsewhere")]).Build();

        Assert.Equal(Path.Combine(AppContext.BaseDirectory, "elsewhere"), ModuleFolder.Of(settings, AppContext.BaseDirectory));
    }

    [Fact]
    public async Task A_broken_module_is_written_into_the_log_and_the_others_are_served()
    {
        using var modules = new TestModules().With("towels").Write("a-broken", "module.md", "no front matter");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);

        var titles = portal.Services.GetRequiredService<Titles>().All;

        Assert.Equal(TestModules.Title, Assert.Single(titles).Value);
        Assert.Contains(
            portal.Log.Lines,
            line => line.StartsWith("Module file a-broken/module.md:1: broken: ", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_salon_hears_of_every_edition_once_before_its_first_page()
    {
        using var modules = new TestModules().With(Blades.Value);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        Assert.Empty((await BookAsync(portal, cast)).Library);
        using var pim = await portal.AsAsync(cast, cast.Junior);

        await pim.GetAsync("/heat");
        await pim.GetAsync("/heat");

        Assert.Equal([new ModuleAsked(Blades, 2, 1, 180, false)], (await BookAsync(portal, cast)).Library);
        Assert.Equal(1, await TimesToldAsync(portal, cast));
    }

    [Fact]
    public async Task After_a_restart_only_what_has_changed_is_told_and_both_texts_are_kept()
    {
        using var modules = new TestModules().With(Blades.Value).With("towels");
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await portal.Services.GetRequiredService<EditionsTold>().TellAsync();
        var before = portal.Services.GetRequiredService<ModuleLibrary>().Find("towels")!.Module;

        modules.With("towels", ("edition: 2", "edition: 3"), ("since: 1", "since: 3"));
        portal = (await portal.AgainAsync()).With("Modules:Folder", modules.Root);
        await using var restarted = portal;
        var after = portal.Services.GetRequiredService<ModuleLibrary>().Find("towels")!.Module;

        Assert.Equal(
            [
                new ModuleAsked(Blades, 2, 1, 180, false),
                // two weeks to catch up with a safety change that came with the portal, from the day it was seen
                new(new("towels"), 3, 3, 180, false) { Changes = [new(3, new DateOnly(2026, 6, 24))] },
            ],
            (await BookAsync(portal, cast)).Library
        );
        Assert.Equal(3, await TimesToldAsync(portal, cast));
        Assert.Equal(before, (await EditionAsync(portal, before.Hash))?.Module);
        Assert.Equal(after, (await EditionAsync(portal, after.Hash))?.Module);
        Assert.Null(await EditionAsync(portal, new string('0', 64)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(60)]
    public async Task An_edition_of_the_library_may_say_how_many_days_its_safety_change_gives(int days)
    {
        using var modules = new TestModules().With("towels");
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await portal.Services.GetRequiredService<EditionsTold>().TellAsync();

        modules.With("towels", ("edition: 2", "edition: 3"), ("since: 1", $"since: 3\ncatch-up-days: {days}"));
        portal = (await portal.AgainAsync()).With("Modules:Folder", modules.Root);
        await using var restarted = portal;
        _ = portal.Services;

        Assert.Equal([new(3, portal.Today.AddDays(days))], (await BookAsync(portal, cast)).Library[0].Changes);
    }

    [Fact]
    public async Task A_picture_is_served_as_what_it_is_and_may_be_kept_for_as_long_as_its_edition()
    {
        using var modules = new TestModules().With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var lesson = portal.Services.GetRequiredService<ModuleLibrary>().Find("towels")!;

        using var plain = await FetchAsync(pim, "/modules/towels/press.svg");
        using var versioned = await FetchAsync(pim, $"/modules/towels/press.svg?v={LessonPage.VersionOf(lesson)}");
        using var again = await FetchAsync(pim, "/modules/towels/press.svg", plain.Headers.ETag!.ToString());

        Assert.Equal(HttpStatusCode.OK, plain.StatusCode);
        Assert.Equal("image/svg+xml", plain.Content.Headers.ContentType!.ToString());
        Assert.Equal(
            "default-src 'none'; style-src 'unsafe-inline'; sandbox",
            Assert.Single(plain.Headers.GetValues("Content-Security-Policy"))
        );
        Assert.Equal("nosniff", Assert.Single(plain.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-cache, private", plain.Headers.CacheControl!.ToString());
        Assert.Equal("max-age=31536000, private, immutable", versioned.Headers.CacheControl!.ToString());
        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
    }

    [Theory]
    [InlineData("/modules/towels/module.md")] // the answers are in it
    [InlineData("/modules/towels/other.svg")]
    [InlineData("/modules/Towels/press.svg")]
    [InlineData("/modules/towels/..%2Ftowels%2Fpress.svg")]
    [InlineData("/modules/nowhere/press.svg")]
    public async Task Nothing_but_the_pictures_of_a_lesson_is_served(string path)
    {
        using var modules = new TestModules().With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Equal(HttpStatusCode.NotFound, (await pim.GetAsync(path)).Status);
    }

    [Fact]
    public async Task Pictures_open_for_whoever_works_here()
    {
        using var modules = new TestModules().With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        await portal.OpenSalonAsync();
        using var stranger = portal.Anyone();

        Assert.NotEqual(HttpStatusCode.OK, (await stranger.GetAsync("/modules/towels/press.svg")).Status);
    }

    [Theory]
    [InlineData("", "/modules/towels/press.svg?v=")]
    [InlineData("/salon", "/salon/modules/towels/press.svg?v=")]
    public void A_lesson_finds_its_pictures_wherever_the_portal_is_mounted(string mounted, string source)
    {
        using var modules = new TestModules().With("towels", ("Begin at the neck.", "Begin at the [neck](/heat \"no\")."));
        var lesson = ModuleLibrary.Load(modules.Root).Find("towels")!;

        var html = LessonPage.Of(lesson, mounted);

        Assert.Contains($" src=\"{source}{lesson.Module.Hash[..16]}\"", html, StringComparison.Ordinal);
        Assert.Contains($"<a href=\"{mounted}/heat\">neck</a>", html, StringComparison.Ordinal);
        Assert.Contains("href=\"https://example.org/house-rules\"", html, StringComparison.Ordinal);
        Assert.Contains("href=\"#source-1\"", html, StringComparison.Ordinal);
    }

    private static Task<SalonBook> BookAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<RecordBook, SalonBook>(book => book.SalonAsync(cast.Salon, TestContext.Current.CancellationToken));

    private static Task<int> TimesToldAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<AcademyDb, int>(db =>
            db.Ledger.CountAsync(
                row => row.SalonId == cast.Salon.Value && row.Kind == "module.edition-seen",
                TestContext.Current.CancellationToken
            )
        );

    private static async Task<HttpResponseMessage> FetchAsync(Visitor visitor, string path, string? known = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        if (known is not null)
            request.Headers.TryAddWithoutValidation("If-None-Match", known);
        return await visitor.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    private static Task<Lesson?> EditionAsync(PortalHost portal, string hash) =>
        portal.DoAsync<Editions, Lesson?>(editions =>
            editions.FindAsync(new("towels"), hash, TestContext.Current.CancellationToken).AsTask()
        );
}
