using System.Security.Cryptography;
using System.Text;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;
using Microsoft.Net.Http.Headers;

namespace Academy.Web.Features.Calendars;

/// <summary>What calendars read: a person's passes that run out, behind a private address and without a sign-in.</summary>
internal static class Feed
{
    private const string Policy = "default-src 'none'; sandbox";

    public static void MapCalendars(this WebApplication app) => app.MapGet("/calendar/{token}.ics", AnswerAsync).AllowAnonymous();

    private static async Task<IResult> AnswerAsync(
        string token,
        CalendarLinks links,
        RecordBook records,
        Shelves shelves,
        EditionBook kept,
        TimeProvider clock,
        HttpContext http
    )
    {
        var stop = http.RequestAborted;
        if (await links.FindAsync(token, stop) is not var (salon, person))
            return Results.NotFound();
        var book = await records.SalonAsync(salon, stop);
        var today = SalonDay.Of(clock.GetUtcNow(), book.Zone);
        if (book.Find(person)?.WorksOn(today) is not true)
            return Results.NotFound();

        var taken = await records.TakenAsync(salon, person, stop);
        var shelf = await shelves.OfAsync(book, kept, stop);
        var due = Reminding.Of(book.Library, taken, today, book.Zone, book.House);
        return Shown(CalendarText.Of(due, shelf.Titles, module => IdOf(salon, person, module)), http);
    }

    // The same reminder keeps its id when its day moves, and the id tells nothing of whose it is.
    private static Guid IdOf(SalonId salon, PersonId person, ModuleName module)
    {
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes($"{salon.Value:N} {person.Value:N} {module.Value}"))[..16];
        bytes[6] = (byte)(bytes[6] & 0x0F | 0x80);
        bytes[8] = (byte)(bytes[8] & 0x3F | 0x80);
        return new Guid(bytes, bigEndian: true);
    }

    private static IResult Shown(string text, HttpContext http)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        http.Response.Headers.ContentSecurityPolicy = Policy;
        http.Response.Headers.CacheControl = "private, no-cache";
        return Results.Bytes(
            bytes,
            "text/calendar; charset=utf-8",
            entityTag: new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes)[..16])}\"")
        );
    }
}
