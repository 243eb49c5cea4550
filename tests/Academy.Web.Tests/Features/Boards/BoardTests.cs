using System.Net;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.People;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Boards;

/// <summary>The board: people by skills, in words and shapes.</summary>
public sealed class BoardTests
{
    [Fact]
    public async Task A_new_salon_has_a_board_with_a_table_each_for_coats_techniques_and_hazards()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var board = await ines.GetAsync("/board");

        Assert.Equal(HttpStatusCode.OK, board.Status);
        Assert.Equal("Who may groom Wednesday 10 June 2026, 10:00", board.Heading);
        var tables = board.Page.QuerySelectorAll("table.board");
        Assert.Equal(
            ["Coats", "Techniques", "Hazards of the dog and the day"],
            tables.Select(table => table.QuerySelector("caption")!.TextContent)
        );
        Assert.Equal([8, 13, 14], tables.Select(table => table.QuerySelectorAll("thead th[scope=col]").Length - 1));
        Assert.All(tables, table => Assert.Equal(5, table.QuerySelectorAll("tbody th[scope=row]").Length));
        Assert.Equal("not begun", Cell(board, "Pim", "smooth").TextContent.Trim());
        Assert.Equal("off", Cell(board, "Pim", "cabinet drying").TextContent.Trim());
        Assert.Equal(["0", "nobody"], Count(board, "wool"));
    }

    [Fact]
    public async Task Each_cell_says_a_word_shows_a_shape_and_opens_its_reasons()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 11);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var board = await ines.GetAsync("/board");

        Assert.Equal("learning 11 of 17", Folded(Cell(board, "Pim", "wool")));
        Assert.Equal("#st-learning", Cell(board, "Pim", "wool").QuerySelector("use")!.GetAttribute("href"));
        Assert.Equal($"/board/{cast.Junior.Id.Value}/wool", Cell(board, "Pim", "wool").QuerySelector("a")!.GetAttribute("href"));
        Assert.Equal("alone", Folded(Cell(board, "Rosa", "wool")));
        Assert.Equal(["2"], Count(board, "wool"));
        Assert.All(
            board.Page.QuerySelectorAll("table.board tbody td"),
            cell => Assert.StartsWith("/board/", cell.QuerySelector("a")!.GetAttribute("href"), StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_clearance_says_its_limits_and_that_it_is_against_the_rules_and_one_person_is_said_in_words()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var until = new DateOnly(2026, 9, 30);
        await portal.ClearAsync(
            cast,
            cast.Junior,
            "silky",
            new Limits(until, NotOnHotDays: true, UpToKg: 20, OnlyWithSeniorIn: true),
            against: "Ten years of it elsewhere, I watched him twice."
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var board = await ines.GetAsync("/board");

        Assert.Equal(
            "alone until 30 Sep, not hot days, up to 20 kg, senior in, against the rules",
            Folded(Cell(board, "Pim", "silky"))
        );
        Assert.Equal(["1", "one person"], Count(board, "silky"));
    }

    [Fact]
    public async Task A_clearance_that_runs_out_within_two_weeks_says_how_many_days_are_left()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        // 3 grooms in 120 days; the declaration stands for three of its day, and the last day is day 119.
        Assert.Equal("alone 9 days left", await RosaAfterAsync(110));
        Assert.Equal("alone last day", await RosaAfterAsync(9));
        Assert.Equal("lapsed 14 of 17", await RosaAfterAsync(1));

        async Task<string> RosaAfterAsync(int days)
        {
            portal.Clock.Advance(TimeSpan.FromDays(days));
            using var ines = await portal.AsAsync(cast, cast.Owner);
            return Folded(Cell(await ines.GetAsync("/board"), "Rosa", "wool"));
        }
    }

    [Fact]
    public async Task A_junior_is_led_to_her_own_skills()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var answer = await pim.GetAsync("/board");

        Assert.Equal((HttpStatusCode.Redirect, "/me"), (answer.Status, answer.Location));
    }

    [Fact]
    public async Task Somebody_who_is_not_signed_in_is_asked_to_sign_in()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var __ = portal;
        var answer = await portal.Anyone().GetAsync("/board");

        Assert.Equal(HttpStatusCode.Redirect, answer.Status);
        Assert.StartsWith("/sign-in", answer.Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_seniors_cells_open_for_juniors_and_herself_and_not_for_her_equals()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var board = await rosa.GetAsync("/board");

        Assert.NotNull(Cell(board, "Pim", "wool").QuerySelector("a"));
        Assert.NotNull(Cell(board, "Rosa", "wool").QuerySelector("a"));
        Assert.Null(Cell(board, "Dora", "wool").QuerySelector("a"));
        Assert.Null(Cell(board, "Ines", "wool").QuerySelector("a"));
    }

    [Fact]
    public async Task Only_people_who_are_in_are_shown_when_asked_for()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var nobody = await ines.GetAsync("/board?in=true");
        await portal.KeepAsync(cast.Salon, Staffing.Tick(cast.Junior, portal.Today, isIn: true, cast.Owner), cast.Owner);
        var one = await ines.GetAsync("/board?in=true");

        Assert.Contains("Nobody is ticked in.", nobody.Words, StringComparison.Ordinal);
        Assert.Equal(["Pim"], Names(one));
        Assert.Contains("Only in today: 1", one.Words, StringComparison.Ordinal);
        Assert.Equal("Everybody", (await ines.GetAsync("/board")).Page.QuerySelector(".filters [aria-current]")!.TextContent);
    }

    [Fact]
    public async Task A_past_day_shows_what_was_known_then_and_says_so()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        portal.Clock.Advance(TimeSpan.FromDays(3));
        await portal.KeepAsync(
            cast.Salon,
            StandingDown.Stop(
                new DecisionId(portal.New()),
                await portal.StandingAsync(cast, cast.Senior, "wool"),
                cast.Owner,
                new Words("Back first."),
                portal.Now
            ),
            cast.Owner
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var past = await ines.GetAsync("/board?at=2026-06-11T14:00");

        Assert.Equal("Who might groom on Thursday 11 June 2026, 14:00", past.Heading);
        Assert.Contains("This is the past.", past.Words, StringComparison.Ordinal);
        Assert.Equal("alone", Cell(past, "Rosa", "wool").QuerySelector(".st")!.TextContent);
        Assert.Equal(
            $"/board/{cast.Senior.Id.Value}/wool?at=2026-06-11T14:00",
            Cell(past, "Rosa", "wool").QuerySelector("a")!.GetAttribute("href")
        );
        Assert.Equal("stood down since 13 Jun", Folded(Cell(await ines.GetAsync("/board"), "Rosa", "wool")));
        Assert.False(past.Message.Headers.Contains("ETag"));
    }

    [Theory]
    [InlineData("2026-13-03T14:00", "Another day: write a date and a time, such as 2026-03-03 14:00.")]
    [InlineData("<script>", "Another day: write a date and a time, such as 2026-03-03 14:00.")]
    [InlineData("2027-03-03T14:00", "Another day: that moment has not come yet. Choose one up to now.")]
    public async Task A_moment_that_cannot_be_looked_at_says_why_above_todays_board(string at, string why)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var answer = await ines.GetAsync($"/board?at={Uri.EscapeDataString(at)}");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal([why], answer.Problems);
        Assert.Equal(3, answer.Page.QuerySelectorAll("table.board").Length);
    }

    [Fact]
    public async Task A_day_before_the_salon_opened_shows_nobody()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var answer = await ines.GetAsync("/board?at=2019-01-01T09:00");

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains("Nobody worked here at that moment.", answer.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_board_that_has_not_changed_is_not_sent_again_and_another_persons_is()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var tag = (await ines.GetAsync("/board")).Message.Headers.ETag!.ToString();

        Assert.Equal(HttpStatusCode.NotModified, await AskAsync(ines, tag));
        Assert.Equal(HttpStatusCode.OK, await AskAsync(rosa, tag));
        using var unchanged = await SendAsync(ines, tag);
        // The page that the browser kept carries its own nonce: a new policy would stop its scripts.
        Assert.False(unchanged.Headers.Contains("Content-Security-Policy"));
        await portal.KeepAsync(cast.Salon, Staffing.Tick(cast.Junior, portal.Today, isIn: true, cast.Owner), cast.Owner);
        Assert.Equal(HttpStatusCode.OK, await AskAsync(ines, tag));
        tag = (await ines.GetAsync("/board")).Message.Headers.ETag!.ToString();
        portal.Clock.Advance(TimeSpan.FromDays(1));
        using var tomorrow = await portal.AsAsync(cast, cast.Owner);
        Assert.Equal(HttpStatusCode.OK, await AskAsync(tomorrow, tag));
    }

    [Fact]
    public async Task A_person_called_like_a_script_stands_on_the_board_as_text()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var hostile = cast.Junior with { Name = "<script>alert(1)</script>" };
        await portal.KeepAsync(cast.Salon, Staffing.Describe(hostile, cast.Junior, cast.Owner, owners: 1), cast.Owner);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var board = await ines.GetAsync("/board");

        Assert.Contains("<script>alert(1)</script>", Names(board));
        Assert.Empty(board.Page.QuerySelectorAll("table script"));
    }

    [Fact]
    public async Task A_board_of_forty_people_costs_as_many_commands_as_one_of_five_and_none_of_the_tables_twice()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        await rosa.GetAsync("/board");
        var few = await portal.Sql.OfAsync(() => ines.GetAsync("/board"));
        for (var more = 0; more < 35; more++)
            await portal.KeepAsync(
                cast.Salon,
                Staffing.Describe(
                    new Person(new PersonId(portal.New()), $"Junior {more}", Role.Junior, portal.Today),
                    before: null,
                    cast.Owner,
                    owners: 1
                ),
                cast.Owner
            );
        await rosa.GetAsync("/board");
        var many = await portal.Sql.OfAsync(() => ines.GetAsync("/board"));
        var again = await portal.Sql.OfAsync(() => ines.GetAsync("/board"));

        Assert.Equal(few, many);
        Assert.Equal(FirstLook, many);
        Assert.Equal(SecondLook, again);
    }

    // Session, book, version, the reading of the frame; and at the first look the standings, kept since somebody
    // else looked, and who is in.
    private const int FirstLook = 6;
    private const int SecondLook = 4;

    private static async Task<HttpStatusCode> AskAsync(Visitor visitor, string tag)
    {
        using var answer = await SendAsync(visitor, tag);
        return answer.StatusCode;
    }

    private static async Task<HttpResponseMessage> SendAsync(Visitor visitor, string tag)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/board");
        request.Headers.TryAddWithoutValidation("If-None-Match", tag);
        return await visitor.Client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    private static IReadOnlyList<string> Names(Answer board) =>
        [
            .. board
                .Page.QuerySelectorAll("table.board")[0]
                .QuerySelectorAll("tbody th")
                .Select(name => name.FirstElementChild!.TextContent),
        ];

    private static IElement Cell(Answer board, string person, string skill)
    {
        var table = board.Page.QuerySelectorAll("table.board").Single(one => Columns(one).Contains(skill));
        var row = table
            .QuerySelectorAll("tbody tr")
            .Single(one => Folded(one.QuerySelector("th")!).StartsWith(person, StringComparison.Ordinal));
        return row.QuerySelectorAll("td")[Columns(table).IndexOf(skill)];
    }

    private static string[] Count(Answer board, string skill)
    {
        var table = board.Page.QuerySelectorAll("table.board").Single(one => Columns(one).Contains(skill));
        return [.. table.QuerySelectorAll("tfoot td")[Columns(table).IndexOf(skill)].Children.Select(part => part.TextContent)];
    }

    private static List<string> Columns(IElement table) =>
        [.. table.QuerySelectorAll("thead th").Skip(1).Select(column => column.TextContent.Trim())];

    private static string Folded(IElement part) =>
        string.Join(' ', part.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
