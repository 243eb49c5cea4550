using Academy.Competence;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Shell.Tags;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;

namespace Academy.Web.Features.Boards;

/// <summary>Who may groom: people by skills, now or as it was known at a past moment. A junior's own line is her page of skills.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class BoardModel(Who who, RecordBook records, BoardShelf shelf, Site site, TimeProvider clock) : AcademyPage
{
    /// <summary>A past moment by the salon's clock, as 2026-03-03T14:00.</summary>
    [BindProperty(SupportsGet = true)]
    public string? At { get; set; }

    /// <summary>Only people who are ticked in.</summary>
    [BindProperty(SupportsGet = true, Name = "in")]
    public bool OnlyIn { get; set; }

    public BoardView View { get; private set; } = null!;

    public BoardHead Head { get; private set; } = null!;

    /// <summary>The tables as they were drawn before; null for a board that is new, or past, which is drawn each time.</summary>
    public IHtmlContent? DrawnBefore => _made?.Drawn;

    public bool IsOwner => who.Seat == Seat.Owner;

    private BoardMade? _made;

    /// <summary>Keeps the tables of today's board as they are drawn now.</summary>
    public IHtmlContent Keep(IHtmlContent tables) =>
        _made is null ? tables : shelf.Keep(_made with { Drawn = Drawn.Write(tables) }).Drawn!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (who.Seat == Seat.Junior)
            return LocalRedirect(Paths.MySkills);

        var now = clock.GetUtcNow();
        var moment = Moment.Asked(At, now, who.Zone);
        if (moment.Wrong is { } wrong)
            ModelState.AddModelError(nameof(At), wrong);
        var time = new SalonTime(who.Zone, moment.At);
        return moment.IsPast ? await PastAsync(time, stop) : await NowAsync(time, stop);
    }

    private async Task<IActionResult> NowAsync(SalonTime time, CancellationToken stop)
    {
        var version = await records.VersionAsync(who.Salon, stop);
        var key = new BoardKey(who.Salon, version, time.Today, who.Person.Id, OnlyIn, SalonTime.Culture.Name);
        if (ModelState.IsValid && IsKnown(key.TagAt(time.Now)))
            return StatusCode(StatusCodes.Status304NotModified);

        _made = shelf.Find(key) ?? shelf.Keep(new(key, await MakeAsync(time, stop)));
        View = _made.View;
        Head = BoardHead.Now(time, OnlyIn, View);
        return ModelState.IsValid ? Page() : Again();
    }

    private async Task<BoardView> MakeAsync(SalonTime time, CancellationToken stop)
    {
        var team = await records.TeamAsync(who.Salon, time.Now, stop);
        var isIn = await records.InOnAsync(who.Salon, time.Today, stop);
        return BoardView.Of(team, new BoardAsked(who.Person, time, isIn, OnlyIn, Ask: ""));
    }

    private async Task<IActionResult> PastAsync(SalonTime time, CancellationToken stop)
    {
        var team = await records.TeamAsKnownAsync(who.Salon, time.Now, stop);
        var isIn = await records.InOnAsync(who.Salon, time.Today, time.Now, stop);
        View = BoardView.Of(team, new BoardAsked(who.Person, time, isIn, OnlyIn, Moment.Ask(time.Now, time.Zone)));
        Head = BoardHead.Past(time, OnlyIn, View);
        return Page();
    }

    // A page that has a sentence to say from the one before is drawn anew, or the sentence would be lost.
    private bool IsKnown(string tag)
    {
        Response.Headers.ETag = tag;
        Response.Headers.CacheControl = "private, no-cache";
        var asked = new EntityTagHeaderValue(tag);
        return !Request.Cookies.ContainsKey(site.CookieName("said"))
            && Request.GetTypedHeaders().IfNoneMatch.Any(known => known.Compare(asked, useStrongComparison: false));
    }
}
