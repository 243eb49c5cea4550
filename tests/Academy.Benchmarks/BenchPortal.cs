using Academy.Competence.People;
using Academy.Storage;
using Academy.Storage.Accounts;
using Academy.Web.Access;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;

namespace Academy.Benchmarks;

/// <summary>The whole portal over a folder that is there already, at a moment that stands still.</summary>
internal sealed class BenchPortal(string folder) : WebApplicationFactory<Program>
{
    // Nothing of the portal's own folder is asked for, and where it lies a program of measurements does not know.
    static BenchPortal() =>
        Environment.SetEnvironmentVariable("ASPNETCORE_TEST_CONTENTROOT_ACADEMY_WEB", AppContext.BaseDirectory);

    /// <summary>A browser in which somebody of the big salon is signed in.</summary>
    public async Task<HttpClient> AsAsync(Person person)
    {
        var key = Guid.CreateVersion7().ToString();
        await using var scope = Services.CreateAsyncScope();
        var account = new Account
        {
            Id = Guid.CreateVersion7(),
            UserName = key,
            SalonId = BigSalon.Salon.Value,
            PersonId = person.Id.Value,
            OpenedAt = BigSalon.Now,
        };
        var made = await scope.ServiceProvider.GetRequiredService<UserManager<Account>>().CreateAsync(account);
        if (!made.Succeeded)
            throw new InvalidOperationException($"{made}");
        await scope.ServiceProvider.GetRequiredService<Sessions>().OpenAsync(SessionOf(person, account.Id, key));
        var client = CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = false });
        client.DefaultRequestHeaders.Add("Cookie", $"academy-session={key}");
        return client;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("Data:Folder", folder);
        builder.UseSetting("Modules:Folder", Directory.CreateDirectory(Path.Combine(folder, "modules")).FullName);
        builder.ConfigureLogging(log => log.ClearProviders());
        builder.ConfigureTestServices(parts =>
        {
            parts.AddSingleton<TimeProvider>(new FakeTimeProvider(BigSalon.Now));
            parts.AddSingleton(TextWriter.Null);
        });
    }

    private static Session SessionOf(Person person, Guid account, string key) =>
        new()
        {
            Key = SessionScheme.NameOf(key),
            AccountId = account,
            Device = "a benchmark",
            OpenedAt = BigSalon.Now,
            LastSeenAt = BigSalon.Now,
            ExpiresAt = SessionLengths.OwnDevice.EndOf(BigSalon.Now, BigSalon.Now),
            Value = new Badge(account, BigSalon.Salon, person.Id, "a benchmark", IsOwnDevice: true).Written(),
        };
}
