using System.IO.Compression;
using System.Net;
using System.Text;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Parcels;

/// <summary>Modules leave the salon as a zip file, and come in as drafts after somebody looked at what is in the file.</summary>
public sealed class ParcelTests
{
    private const string Blades = "blades-and-scissors";

    [Fact]
    public async Task A_packed_module_is_its_folder_again()
    {
        using var modules = new TestModules().Titled(Blades, "Blades").With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = await ines.GetAsync("/study/parcels");

        var one = await FetchAsync(
            ines,
            page.Page.QuerySelectorAll("main h3 a").Single(link => link.TextContent == "Blades").GetAttribute("href")
        );

        Assert.Equal("application/zip", one.Content.Headers.ContentType!.ToString());
        Assert.Equal("blades-and-scissors-2026-06-10.zip", one.Content.Headers.ContentDisposition!.FileName);
        var packed = Assert.Single(ModuleParcel.Unpack(await BytesAsync(one)).Modules);
        Assert.Equal(portal.LibraryLesson(Blades).Text, packed.Text);
        Assert.Equal(2, packed.Pictures.Count);
        Assert.Equal(
            2,
            ModuleParcel.Unpack(await BytesAsync(await FetchAsync(ines, "/study/parcels?handler=Pack&what=all"))).Modules.Count
        );
        foreach (var what in (string[])["own", "nowhere", "..", ""])
            Assert.Equal(
                HttpStatusCode.NotFound,
                (await FetchAsync(ines, $"/study/parcels?handler=Pack&what={what}")).StatusCode
            );
    }

    [Fact]
    public async Task The_salons_own_editions_are_packed_in_place_of_the_librarys()
    {
        using var modules = new TestModules().Titled(Blades, "Blades").With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await portal.TellEditionsAsync();
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the tail."));
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var own = ModuleParcel.Unpack(await BytesAsync(await FetchAsync(ines, "/study/parcels?handler=Pack&what=own"))).Modules;

        Assert.Contains("Begin at the tail.", Assert.Single(own).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_in_a_parcel_is_shown_before_anything_is_taken()
    {
        using var modules = new TestModules().Titled(Blades, "Blades").With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var here = Packed(portal, Blades);
        var parcel = ModuleParcel.Pack([
            // under other numbers it is still the same
            here with
            {
                Text = here.Text.Replace("edition: 2", "edition: 9", StringComparison.Ordinal),
            },
            Packed(portal, "towels", ("Begin at the neck.", "Begin at the tail.")),
            Packed(portal, "towels", ("name: towels", "name: cloths")) with
            {
                Name = "cloths",
            },
            new("broken", "no front matter", here.Pictures),
        ]);

        var brought = await SendAsync(ines, parcel);

        Assert.Equal("/study/parcels/brought", brought.Location);
        var page = await brought.FollowAsync();
        Assert.Equal("4 modules in the parcel", page.Heading);
        Assert.Contains("new here", page.Words, StringComparison.Ordinal);
        Assert.Contains("in other words than here", page.Words, StringComparison.Ordinal);
        Assert.Contains("the same as here", page.Words, StringComparison.Ordinal);
        Assert.Contains("broken/module.md: There is no front matter.", page.Words, StringComparison.Ordinal);
        Assert.Equal(["cloths", "towels"], page.Form().All("Chosen"));
        Assert.Empty(await DraftsAsync(portal, cast));
    }

    [Fact]
    public async Task What_is_chosen_becomes_a_draft_of_that_person_once_and_is_published_by_nobody()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = await (
            await SendAsync(ines, ModuleParcel.Pack([Packed(portal, Blades, ("Begin at the neck.", "Begin at the tail."))]))
        ).FollowAsync();

        var first = await page.Form().SendAsync();
        var second = await page.Form().SendAsync();

        Assert.Equal(
            "Blades is a draft of yours now. A second reader looks at it before it is studied.",
            (await first.FollowAsync()).Said
        );
        Assert.Equal(HttpStatusCode.Found, second.Status);
        var draft = Assert.Single(await DraftsAsync(portal, cast));
        Assert.Equal((Blades, cast.Owner.Id, null), (draft.Module.Value, draft.Author, draft.AskedAt));
        var pictures = await portal.DoAsync<DraftBook, int>(async drafts =>
            (await drafts.PicturesAsync(cast.Salon, draft.Module, default)).Count
        );
        Assert.Equal(2, pictures);
        Assert.Contains("Begin at the neck.", (await ines.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
        Assert.Contains(
            "Ines is writing it here",
            (await ines.GetAsync("/study/parcels/brought")).Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_drawing_that_holds_a_script_is_refused_with_its_module()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var hostile = Packed(portal, Blades, ("Begin at the neck.", "Begin at the tail."));
        var drawing = Encoding.UTF8.GetBytes(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><script>alert(1)</script></svg>"
        );

        var page = await (
            await SendAsync(ines, ModuleParcel.Pack([hostile with { Pictures = hostile.Pictures.SetItem("press.svg", drawing) }]))
        ).FollowAsync();

        Assert.Contains("refused", page.Words, StringComparison.Ordinal);
        Assert.Contains(
            "blades-and-scissors/press.svg: The picture holds the element <script>.",
            page.Words,
            StringComparison.Ordinal
        );
        Assert.Empty(page.Page.QuerySelectorAll("main form, main script"));
    }

    [Theory]
    [InlineData("../evil/module.md", "Take this out.")]
    [InlineData("/etc/module.md", "Take this out.")]
    [InlineData("blades/module.exe", "Take this out.")]
    [InlineData("blades/deeper/module.md", "Take this out.")]
    public async Task A_file_that_points_elsewhere_refuses_the_whole_parcel_in_clear_words(string name, string words)
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var refused = await SendAsync(ines, Zip((name, "x")));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains(name, refused.Problems[0], StringComparison.Ordinal);
        Assert.Contains(words, refused.Problems[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_parcel_is_told_so()
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(["The parcel: choose a zip file"], (await SendAsync(ines, [])).Problems);
        Assert.Contains(
            "not a zip file that can be read",
            (await SendAsync(ines, "hello"u8.ToArray())).Problems[0],
            StringComparison.Ordinal
        );
        Assert.Contains(
            "20 MB are the most",
            (await SendAsync(ines, new byte[ModuleParcel.LargestParcel + 1])).Problems[0],
            StringComparison.Ordinal
        );
        // much of nothing in little
        Assert.Contains(
            "too large",
            (await SendAsync(ines, Zip(("blades/module.md", new string(' ', 3_000_000))))).Problems[0],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_parcel_is_only_there_for_whoever_brought_it()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var other = await portal.OpenSalonAsync("Elsewhere");
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var theirs = await portal.AsAsync(other, other.Owner);
        await SendAsync(ines, ModuleParcel.Pack([Packed(portal, Blades, ("Begin at the neck.", "Begin at the tail."))]));

        var gone = await theirs.GetAsync("/study/parcels/brought");

        Assert.Equal("/study/parcels", gone.Location);
        Assert.Equal("There is no parcel of yours here any more. Choose the file again.", (await gone.FollowAsync()).Said);
        Assert.Equal(HttpStatusCode.OK, (await ines.GetAsync("/study/parcels/brought")).Status);
    }

    [Fact]
    public async Task Somebody_elses_draft_stays_as_it_is()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = await (
            await SendAsync(ines, ModuleParcel.Pack([Packed(portal, Blades, ("Begin at the neck.", "Begin at the tail."))]))
        ).FollowAsync();
        await portal.DoAsync<DraftBook, bool>(drafts =>
            drafts.BeginAsync(
                cast.Salon,
                new(new(Blades), "her words", cast.Senior.Id, portal.Now, AskedAt: null, "", CatchUpBy: null, Returned: null, 0),
                new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal)
            )
        );

        var answer = await page.Form().SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains("Rosa is writing it here", answer.Problems[0], StringComparison.Ordinal);
        Assert.Equal(cast.Senior.Id, Assert.Single(await DraftsAsync(portal, cast)).Author);
    }

    private static ModuleFiles Packed(PortalHost portal, string module, params (string From, string To)[] changes)
    {
        var files = ModuleFiles.Of(portal.LibraryLesson(module));
        foreach (var (from, to) in changes)
        {
            Assert.Contains(from, files.Text, StringComparison.Ordinal);
            files = files with { Text = files.Text.Replace(from, to, StringComparison.Ordinal) };
        }
        return files;
    }

    private static async Task<Answer> SendAsync(Visitor visitor, byte[] parcel)
    {
        var form = (await visitor.GetAsync("/study/parcels")).Form();
        using MultipartFormDataContent content = new()
        {
            { new StringContent(form["__RequestVerificationToken"]!), "__RequestVerificationToken" },
            { new ByteArrayContent(parcel), "Parcel", "modules.zip" },
        };
        return await visitor.PostAsync("/study/parcels", content);
    }

    private static byte[] Zip(params (string Name, string Text)[] files)
    {
        using MemoryStream into = new();
        using (ZipArchive zip = new(into, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var (name, text) in files)
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(Encoding.UTF8.GetBytes(text));
            }
        return into.ToArray();
    }

    private static Task<HttpResponseMessage> FetchAsync(Visitor visitor, string? address) =>
        visitor.Client.GetAsync(address, TestContext.Current.CancellationToken);

    private static async Task<byte[]> BytesAsync(HttpResponseMessage answer) =>
        await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);

    private static Task<IReadOnlyList<DraftLine>> DraftsAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<DraftBook, IReadOnlyList<DraftLine>>(drafts => drafts.AllAsync(cast.Salon, default));
}
