using Academy.Competence.People;
using Academy.Storage;

namespace Academy.Web.Access;

/// <summary>What is written into the console of whoever starts the portal.</summary>
public static class Announcing
{
    /// <summary>The key to set up, where there is no salon; a link for somebody who cannot get in, where the start asks for one.</summary>
    public static async Task AnnounceAsync(this WebApplication app)
    {
        var stop = app.Lifetime.ApplicationStopping;
        await app.Services.GetRequiredService<FirstRun>().AnnounceAsync(stop);
        if (app.Configuration["link-for"] is { Length: > 0 } name)
            await app.WriteLinkAsync(name, stop);
    }

    // Who may start the portal may read its database: a link from here opens nothing that is not open to her already.
    private static async Task WriteLinkAsync(this WebApplication app, string name, CancellationToken stop)
    {
        var console = app.Services.GetRequiredService<TextWriter>();
        await using var scope = app.Services.CreateAsyncScope();
        var parts = scope.ServiceProvider;
        if (await FindAsync(parts, name, stop) is not { } found)
        {
            await console.WriteLineAsync($"Nobody who works here is called {name}: no link was made.");
            return;
        }
        var path = await parts.GetRequiredService<Links>().MakeAsync(found.Salon, found.Person.Id);
        await console.WriteLineAsync($"With this link {found.Person.Name} chooses a new password, once, within 7 days: {path}");
    }

    private static async Task<(Competence.SalonId Salon, Person Person)?> FindAsync(
        IServiceProvider parts,
        string name,
        CancellationToken stop
    )
    {
        if (await parts.GetRequiredService<FirstRun>().SalonAsync(stop) is not { } salon)
            return null;
        var book = await parts.GetRequiredService<RecordBook>().SalonAsync(salon, stop);
        return
            book.People.SingleOrDefault(one =>
                one.LeftOn is null && string.Equals(one.Name, name, StringComparison.OrdinalIgnoreCase)
            )
                is { } person
            ? (salon, person)
            : null;
    }
}
