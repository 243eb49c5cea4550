using Academy.Modules;
using Academy.Modules.Pictures;
using Academy.Web.Access;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Net.Http.Headers;

namespace Academy.Web.Library;

/// <summary>The pictures of the lessons, for whoever may read the lessons.</summary>
internal static class Pictures
{
    // A drawing may dress itself and nothing more: it was looked through, and this holds even where something was overlooked.
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

    private const string Unchanging = "private, max-age=31536000, immutable";

    public static void MapPictures(this WebApplication app) =>
        app.MapGet("/modules/{name}/{file}", Answer).RequireAuthorization(Policies.AnyoneHere);

    /// <summary>A picture of an edition that never changes, for whoever may ask for it.</summary>
    public static FileContentResult Shown(HttpResponse response, Picture picture)
    {
        response.Headers.ContentSecurityPolicy = Policy;
        response.Headers.CacheControl = Unchanging;
        return new FileContentResult(picture.Bytes.ToArray(), picture.ContentType);
    }

    /// <summary>A picture of a module that is being written: another may take its place at any time.</summary>
    public static FileContentResult ShownForNow(HttpResponse response, Picture picture)
    {
        var shown = Shown(response, picture);
        response.Headers.CacheControl = "private, no-cache";
        return shown;
    }

    private static IResult Answer(string name, string file, string? v, Shelf library, HttpContext http)
    {
        if (library.Find(name) is not { } lesson || library.FindPicture(name, file) is not { } picture)
            return Results.NotFound();

        var isOfThisEdition = LessonPage.VersionOf(lesson) == v;
        http.Response.Headers.ContentSecurityPolicy = Policy;
        http.Response.Headers.CacheControl = isOfThisEdition ? Unchanging : "private, no-cache";
        return Results.Bytes(
            picture.Bytes,
            picture.ContentType,
            entityTag: new EntityTagHeaderValue($"\"{lesson.Module.Hash}\"")
        );
    }
}
