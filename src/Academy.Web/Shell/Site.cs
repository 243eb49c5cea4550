using System.Net;
using Microsoft.AspNetCore.HttpOverrides;

namespace Academy.Web.Shell;

/// <summary>What a salon says about its installation, in the configuration: <c>Site:</c>, <c>Data:Folder</c>, <c>Demo</c>.</summary>
/// <param name="Https">One switch: the portal is reached over https, so cookies are locked to it and HSTS is sent.</param>
/// <param name="Demo">An invented salon that anybody at this machine may walk through; it has a database of its own.</param>
/// <param name="Development">The parts gallery is shown.</param>
/// <param name="DataFolder">Where the database lies, and the salon's own files in a folder below it.</param>
/// <param name="ColourFile">Name of a style sheet in that folder, or nothing.</param>
/// <param name="Logo">Name of a picture in that folder, or nothing.</param>
public sealed record Site(bool Https, bool Demo, bool Development, string DataFolder, string? ColourFile, string? Logo)
{
    /// <summary>Where the salon keeps its own colour file and logo.</summary>
    public string OwnFolder => Path.Combine(DataFolder, "own");

    public bool ShowsParts => Demo || Development;

    public static Site Of(IConfiguration settings, IHostEnvironment house) =>
        new(
            settings.GetValue("Site:Https", defaultValue: false),
            settings.GetValue("Demo", defaultValue: false),
            house.IsDevelopment(),
            Path.GetFullPath(settings["Data:Folder"] ?? "data", house.ContentRootPath),
            Named(settings["Site:ColourFile"]),
            Named(settings["Site:Logo"])
        );

    /// <summary>The name of a cookie: <c>__Host-</c> in front of it where https allows that.</summary>
    public string CookieName(string name) => Https ? $"__Host-{name}" : $"academy-{name}";

    /// <summary>Names a cookie and closes it: not for scripts, not for other sites, not without https where there is https.</summary>
    public void Dress(CookieBuilder cookie, string name)
    {
        cookie.Name = CookieName(name);
        cookie.Path = "/";
        cookie.HttpOnly = true;
        cookie.SameSite = SameSiteMode.Strict;
        cookie.IsEssential = true;
        cookie.SecurePolicy = Https ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
    }

    private static string? Named(string? file) => string.IsNullOrWhiteSpace(file) ? null : file.Trim();
}

/// <summary>Which machines in front of the portal may say how the visitor came: this one, and those named in <c>Site:Proxies</c>.</summary>
internal static class Proxies
{
    public static void AddTrustOfProxies(this IServiceCollection services, Site site, IConfiguration settings)
    {
        if (!site.Https)
        {
            return;
        }

        var proxies = settings.GetSection("Site:Proxies").Get<string[]>() ?? [];
        services.Configure<ForwardedHeadersOptions>(trust =>
        {
            trust.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            foreach (var proxy in proxies)
            {
                trust.KnownProxies.Add(IPAddress.Parse(proxy));
            }
        });
    }
}
