using System.Security.Claims;
using Academy.Competence.Salons;
using Academy.Storage;

namespace Academy.Web.Access;

/// <summary>Recognises who comes: between the session and the policies. Somebody who no longer works here is nobody.</summary>
internal sealed class Comers(RequestDelegate next, TimeProvider clock)
{
    public async Task InvokeAsync(HttpContext http, Who who, RecordBook records)
    {
        if (Badge.Of(http.User) is { } badge)
            Recognise(http, who, badge, await records.SalonAsync(badge.Salon, http.RequestAborted));
        await next(http);
    }

    private void Recognise(HttpContext http, Who who, Badge badge, SalonBook book)
    {
        if (book.Find(badge.Person) is { } person && person.WorksOn(SalonDay.Of(clock.GetUtcNow(), book.Zone)))
            who.Comes(new Present(badge, book, person, Sources.Of(http)));
        else
            http.User = new ClaimsPrincipal(new ClaimsIdentity());
    }
}
