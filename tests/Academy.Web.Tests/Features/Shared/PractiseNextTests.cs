using Academy.Web.Features.Shared;
using Academy.Web.Tests.Hosting;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Features.Shared;

/// <summary>A junior sees a sign-off at once, with what to practise next; the newest stands first.</summary>
public sealed class PractiseNextTests
{
    [Fact]
    public async Task The_newest_sign_offs_stand_first_with_what_the_senior_wrote()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        foreach (
            var (dog, words, suits) in new[]
            {
                ("Fig", "Mind the tail.", true),
                ("Teasel", "Dry the feet.", false),
                ("Moss", "Go on.", true),
            }
        )
        {
            var groom = await portal.LogAsync(
                cast,
                cast.Junior,
                cast.Senior,
                await portal.MeetAsync(cast, dog, "Bichon Frise", "wool")
            );
            await portal.SignAsync(cast, cast.Senior, groom, suits, words);
        }

        var shown = await OfAsync(portal, cast, count: 2);

        Assert.Equal(["Moss, suited", "Teasel, needed fixing"], shown.Select(next => next.Title));
        Assert.Equal(["Go on.", "Dry the feet."], shown.Select(next => next.Says));
        Assert.Equal(["Support level 2, hands on together: the senior was needed."], shown[1].Practise);
        Assert.Equal("Rosa, just now", shown[0].Signed);
        Assert.InRange(await portal.Sql.OfAsync(() => OfAsync(portal, cast, count: 3)), 1, 4);
    }

    [Fact]
    public async Task Whoever_was_never_judged_has_nothing_to_read()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;

        Assert.Empty(await OfAsync(portal, cast, count: 3));
    }

    private static async Task<IReadOnlyList<PractiseNext>> OfAsync(PortalHost portal, Cast cast, int count)
    {
        var names = Names.Of(await portal.BookAsync(cast), portal.Now);
        return await portal.DoAsync<PractiseNextQueries, IReadOnlyList<PractiseNext>>(queries =>
            queries.OfAsync(cast.Salon, cast.Junior.Id, count, names, default)
        );
    }
}
