using System.Net;
using System.Text;
using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Tests.Features.Ledgers;

/// <summary>
/// Free words are erased and the chain still holds: UK GDPR Art. 17 against an append-only log, as the standards paper 8.4 has it
/// (text and key beside the entry go, the seal stays). Its canary test is 8.5: the string is in no file afterwards.
/// </summary>
public sealed class EraseTests
{
    private const string Canary = "Canary-7319 of Lime Street";

    [Fact]
    public async Task Erased_words_are_on_no_page_and_in_no_file_and_the_ledger_holds()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast, one => one with { Client = Canary });
        var groom = await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior, told => told with { Notes = new Words(Canary) });
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var story = $"/grooms/{groom.Id.Value}";
        Assert.Contains(Canary, (await ines.GetAsync(story)).Words, StringComparison.Ordinal);
        Assert.True(await IsInAFileAsync(portal));

        foreach (var kind in new[] { "dog.described", "groom.logged" })
        {
            var entry = $"/ledger/{await EntryAsync(portal, kind)}";
            Assert.Contains(Canary, (await ines.GetAsync(entry)).Words, StringComparison.Ordinal);
            var erased = await ines.SendAsync(entry, ("Form.Why", "Asked for."), ("Form.Password", Signature.Password));
            Assert.Equal((HttpStatusCode.Redirect, entry), (erased.Status, erased.Location));
            var after = await erased.FollowAsync();
            Assert.Contains("Its words erased on 10 June by Ines", after.Words, StringComparison.Ordinal);
            Assert.DoesNotContain(Canary, after.Words, StringComparison.Ordinal);
        }

        foreach (var path in new[] { story, $"/dogs/{dog.Id.Value}", "/ledger", "/dogs" })
            Assert.DoesNotContain(Canary, (await ines.GetAsync(path)).Words, StringComparison.Ordinal);
        Assert.Contains("Biscuit", (await ines.GetAsync($"/dogs/{dog.Id.Value}")).Words, StringComparison.Ordinal);
        Assert.Contains("words erased on 10 June by Ines", (await ines.GetAsync("/ledger")).Words, StringComparison.Ordinal);
        Assert.False(await IsInAFileAsync(portal));
        var found = await portal.DoAsync<LedgerCheck, LedgerChecked>(check => check.CheckAsync(cast.Salon.Value, default));
        Assert.Equal((true, 2L), (found.Holds, found.Erased));

        await portal.DoAsync<AcademyDb, long>(db => new Rebuilding(db).RebuildAsync(cast.Salon, portal.Now));
        Assert.DoesNotContain(Canary, (await ines.GetAsync(story)).Words, StringComparison.Ordinal);
        Assert.False(await IsInAFileAsync(portal));
    }

    [Fact]
    public async Task It_takes_the_owners_password_and_a_reason_and_is_done_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior, told => told with { Notes = new Words(Canary) });
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var entry = $"/ledger/{await EntryAsync(portal, "groom.logged")}";

        var unsigned = await ines.SendAsync(entry, ("Form.Why", "Asked for."), ("Form.Password", "guess"));
        Assert.Equal(["Password: this is not yours. Write it once more"], unsigned.Problems);
        var silent = await ines.SendAsync(entry, ("Form.Why", ""), ("Form.Password", Signature.Password));
        Assert.Equal(["Write why these words are erased, without repeating them."], silent.Problems);
        var form = (await ines.GetAsync(entry)).Form().With(("Form.Why", "Asked for."), ("Form.Password", Signature.Password));
        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);

        Assert.Empty((await ines.GetAsync(entry)).Page.QuerySelectorAll("main form[method=post]"));
        Assert.Equal(1, await portal.DoAsync<AcademyDb, int>(db => db.Ledger.CountAsync(row => row.Kind == "words.erased")));
    }

    [Fact]
    public async Task Names_in_the_book_are_not_erased_and_what_is_not_there_is_not_found()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var person = await ines.GetAsync($"/ledger/{await EntryAsync(portal, "person.described")}");

        Assert.Contains("describe the person, the dog or the salon anew", person.Words, StringComparison.Ordinal);
        Assert.Empty(person.Page.QuerySelectorAll("main form[method=post]"));
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync("/ledger/99999")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync("/ledger/first")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync("/ledger/1")).Status);
    }

    private static Task<long> EntryAsync(PortalHost portal, string kind) =>
        portal.DoAsync<AcademyDb, long>(db => db.Ledger.Where(row => row.Kind == kind).Select(row => row.Seq).FirstAsync());

    private static async Task<bool> IsInAFileAsync(PortalHost portal)
    {
        var wanted = Encoding.UTF8.GetBytes(Canary);
        foreach (
            var path in Directory
                .GetFiles(portal.Folder, "academy.db*")
                .Where(path => !path.EndsWith(".lock", StringComparison.Ordinal))
        )
        {
            await using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            using var bytes = new MemoryStream();
            await file.CopyToAsync(bytes, TestContext.Current.CancellationToken);
            if (bytes.GetBuffer().AsSpan(0, (int)bytes.Length).IndexOf(wanted) >= 0)
                return true;
        }
        return false;
    }
}
