using Academy.Web.Shell;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.Razor;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Shared;

/// <summary>Says what stands around a page for the person who asked for it.</summary>
public interface IFrames
{
    Task<PageFrame> OfAsync(HttpContext http, CancellationToken stop);
}

/// <summary>The frame while nobody can sign in.</summary>
public sealed class SignedOutFrames : IFrames
{
    public Task<PageFrame> OfAsync(HttpContext http, CancellationToken stop) => Task.FromResult(PageFrame.SignedOut);
}

/// <summary>A page model that is shown without a frame, because it must work when nothing else does.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class NoFrameAttribute : Attribute;

/// <summary>Asks for the frame just before a page is drawn, so that no page has to.</summary>
public sealed class FrameFilter(IFrames frames) : IAsyncResultFilter
{
    public async Task OnResultExecutionAsync(ResultExecutingContext context, ResultExecutionDelegate next)
    {
        var http = context.HttpContext;
        if (context.Result is PageResult && Wants(context.Controller) && http.Features.Get<PageFrame>() is null)
        {
            http.Features.Set(await frames.OfAsync(http, http.RequestAborted));
        }

        await next();
    }

    private static bool Wants(object model) => !model.GetType().IsDefined(typeof(NoFrameAttribute), inherit: true);
}

/// <summary>A view that can see its frame: the layout and the partials of the shell.</summary>
public abstract class FramedView : RazorPage<dynamic>
{
    public PageFrame Frame => Context.Features.Get<PageFrame>() ?? PageFrame.SignedOut;

    /// <summary>Where this page is, as the index names places.</summary>
    public string Here => Context.Request.Path.Value ?? "/";

    public string To(string path) => Context.Request.PathBase + path;

    /// <summary>The sentence that the page before left, once. Nothing is read, and no cookie touched, where none was left.</summary>
    public string? Said() =>
        Context.Request.Cookies.ContainsKey(Context.RequestServices.GetRequiredService<Site>().CookieName("said"))
            ? TempData["Said"] as string
            : null;

    /// <summary>Whether the page asks for a password.</summary>
    public bool AsksForSecrets => Shell.Tags.Secrets.AreAsked(Context);

    public string? Text(string key) => ViewData[key] as string;
}
