using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Academy.Web.Shell;

/// <summary>The outside of the portal: pages, headers, errors, static files and the look.</summary>
public static class AcademyShell
{
    public static WebApplicationBuilder AddAcademyShell(this WebApplicationBuilder builder)
    {
        // Outside Development the asset list of a build that was not published is empty without this line.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.AddServerHeader = false);

        var site = Site.Of(builder.Configuration, builder.Environment);
        builder.Services.AddSingleton(site);
        builder.Services.AddScoped<Nonce>();
        builder.Services.AddSingleton<OwnLook>();
        builder.Services.TryAddScoped<IFrames, SignedOutFrames>();
        builder.Services.TryAddSingleton<IVetPhone, VetPhoneFromSettings>();
        builder.Services.AddExceptionHandler<FailureNumber>();
        builder.Services.AddHealthChecks();
        builder.Services.AddQueries();
        builder.Services.AddPages(site);
        builder.Services.AddTrustOfProxies(site, builder.Configuration);
        return builder;
    }

    /// <summary>Headers and errors, then routing. Sign-in and access come after this and before <see cref="MapAcademyShell"/>.</summary>
    public static WebApplication UseAcademyShell(this WebApplication app)
    {
        if (app.Services.GetRequiredService<Site>().Https)
        {
            app.UseForwardedHeaders();
        }

        app.UseMiddleware<Headers>();
        app.UseExceptionHandler("/error");
        app.UseStatusCodePagesWithReExecute("/status/{0}");
        app.UseRouting();
        return app;
    }

    public static WebApplication MapAcademyShell(this WebApplication app)
    {
        app.MapStaticAssets().AllowAnonymous();
        app.MapOwnLook();
        app.MapHealthChecks("/healthz/live", new HealthCheckOptions { Predicate = _ => false }).AllowAnonymous();
        app.MapHealthChecks("/healthz/ready").AllowAnonymous();
        app.MapRazorPages().WithStaticAssets();
        return app;
    }

    private static void AddPages(this IServiceCollection services, Site site)
    {
        services
            .AddRazorPages(pages => pages.RootDirectory = "/Features")
            .AddMvcOptions(mvc => mvc.Filters.Add<FrameFilter>())
            .AddViewOptions(views => views.HtmlHelperOptions.ClientValidationEnabled = false)
            .AddCookieTempDataProvider(said => site.Dress(said.Cookie, "said"));
        services.AddAntiforgery(forms =>
        {
            forms.HeaderName = "X-CSRF-TOKEN";
            forms.SuppressXFrameOptionsHeader = true;
            site.Dress(forms.Cookie, "form");
        });
        services.AddRouting(routes => routes.LowercaseUrls = true);
    }
}
