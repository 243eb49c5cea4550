using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Access;

public sealed class PageTableTests
{
    [Fact]
    public async Task The_table_of_pages_says_for_whom_each_of_them_opens()
    {
        await using var portal = new PortalHost();
        var pages = await EveryRouteTests.PagesAsync(portal);

        // A new page stands in the table with the policy that it is meant to have, before its model names one.
        var table = await File.ReadAllLinesAsync("data/access/pages.txt", TestContext.Current.CancellationToken);
        Assert.Equal(
            table.Where(line => line.Length > 0 && line[0] != '#').Order(StringComparer.Ordinal),
            pages.Select(page => $"{page.Route} {page.Policy}").Order(StringComparer.Ordinal)
        );
    }
}
