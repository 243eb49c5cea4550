using System.Net;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Tests.Features.Ledgers;

/// <summary>The page of the ledger.</summary>
public sealed class LedgerTests
{
    [Fact]
    public async Task The_newest_entries_stand_first_in_words_with_who_and_from_where()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = await ines.GetAsync("/ledger");

        var first = page.Page.QuerySelector("table.ledger tbody tr")!;
        Assert.Equal("experience declared", first.QuerySelector("th")!.TextContent);
        Assert.Contains("Ines", first.TextContent, StringComparison.Ordinal);
        Assert.Contains("a test", first.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Years of it", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Older_entries_follow_each_once_down_to_the_first()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var numbers = new List<string>();
        string? next = "/ledger";
        while (next is not null)
        {
            var page = await ines.GetAsync(next);
            numbers.AddRange(page.Page.QuerySelectorAll("table.ledger tbody td.n").Select(number => number.TextContent));
            next = page.Page.QuerySelector("a[href*='before=']")?.GetAttribute("href");
        }

        Assert.Equal("0", numbers[^1]);
        Assert.Equal(numbers.Count, numbers.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(int.Parse(numbers[0], null) + 1, numbers.Count);
    }

    [Fact]
    public async Task The_whole_ledger_is_checked_and_the_first_broken_place_is_named()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var whole = await ines.SendAsync("/ledger", "#check");
        Assert.Equal((HttpStatusCode.OK, "The ledger holds"), (whole.Status, whole.Heading));
        Assert.Contains("entries in one unbroken chain", whole.Words, StringComparison.Ordinal);

        await portal.DoAsync<AcademyDb, int>(db =>
            db.Salons.Where(row => row.Id == cast.Salon.Value)
                .ExecuteUpdateAsync(set => set.SetProperty(row => row.Version, row => row.Version + 1))
        );
        var broken = await ines.SendAsync("/ledger", "#check");
        Assert.Equal("The ledger does not hold", broken.Heading);
        Assert.Contains("the end of the ledger is missing", broken.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_salons_entries_are_not_shown()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        await portal.DeclareAsync(other, other.Senior, "wool");
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.DoesNotContain("experience declared", (await ines.GetAsync("/ledger")).Words, StringComparison.Ordinal);
        // Session and book; the entries; what was erased; the reading of the frame.
        Assert.Equal(5, await portal.Sql.OfAsync(() => ines.GetAsync("/ledger")));
    }
}
