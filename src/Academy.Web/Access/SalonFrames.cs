using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;

namespace Academy.Web.Access;

/// <summary>What stands around a page for the person signed in: her name and seat, her salon, what the room is like.</summary>
public sealed class SalonFrames(Who who, RecordBook records, Site site, TimeProvider clock) : IFrames
{
    public async Task<PageFrame> OfAsync(HttpContext http, CancellationToken stop)
    {
        if (!who.IsHere)
            return PageFrame.SignedOut with { Demo = Demo };

        var now = clock.GetUtcNow();
        var newest = await records.NewestReadingAsync(who.Salon, now, stop);
        return new PageFrame(who.Person.Name, who.Seat, who.Book.Name, Say.Reading(newest, who.Book, now), Demo);
    }

    private string? Demo => site.Demo ? $"Demo: an invented salon. Where you sign, write “{DemoDoor.Word}”." : null;
}
