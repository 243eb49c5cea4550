using Academy.Storage;
using Academy.Storage.Accounts;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.Identity;

namespace Academy.Web.Access;

/// <summary>Who is signed in, and which pages open for her.</summary>
public static class AcademyAccess
{
    public static WebApplicationBuilder AddAcademyAccess(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton(parts => Ids.ByChance(parts.GetRequiredService<TimeProvider>()));
        builder.Services.AddSingleton(Console.Out);
        builder.Services.AddSingleton<FirstRun>();
        builder.Services.AddHttpContextAccessor();
        builder.Services.AddSingleton<DemoDoor>();
        builder.Services.AddScoped<Who>();
        builder.Services.AddScoped<IFrames, SalonFrames>();
        builder.Services.AddScoped<IVetPhone, VetPhoneOfSalon>();
        builder.Services.AddAccounts();
        builder.Services.AddKeys();
        builder.Services.AddHostedService<Sweep>();
        builder.Services.AddSessions();
        builder.Services.AddScoped<IAuthorizationHandler, WorksHereAsked>();
        builder.Services.AddAuthorization(Policies.Write);
        // A one-time link is part of its address: addresses are not written down.
        builder.Logging.AddFilter("Microsoft.AspNetCore.Hosting.Diagnostics", LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.EntityFrameworkCore.Database.Command", LogLevel.Warning);
        return builder;
    }

    public static WebApplication UseAcademyAccess(this WebApplication app)
    {
        app.UseMiddleware<BeforeTheFirstDay>();
        app.UseAuthentication();
        app.UseMiddleware<Comers>();
        app.UseAuthorization();
        return app;
    }

    private static void AddAccounts(this IServiceCollection services)
    {
        services.AddIdentityCore<Account>(Passwords.Write).AddEntityFrameworkStores<AcademyDb>();
        services.AddScoped<Door>();
        services.AddScoped<Accounts>();
        services.AddScoped<Links>();
        services.AddScoped<CalendarLinks>();
        services.Configure<PasswordHasherOptions>(hash => hash.IterationCount = Passwords.Iterations);
    }

    private static void AddKeys(this IServiceCollection services)
    {
        services.AddSingleton<KeyRing>();
        services.AddDataProtection().SetApplicationName("Academy");
        services.AddOptions<KeyManagementOptions>().Configure<KeyRing>((keys, ring) => keys.XmlRepository = ring);
    }

    private static void AddSessions(this IServiceCollection services) =>
        services
            .AddAuthentication(SessionScheme.Name)
            .AddScheme<AuthenticationSchemeOptions, SessionScheme>(SessionScheme.Name, configureOptions: null);
}
