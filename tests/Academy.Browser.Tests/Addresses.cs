using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Academy.Web.Access;
using Academy.Web.Library;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Browser.Tests;

/// <summary>A page as somebody of the demo salon meets it.</summary>
/// <param name="Route">The page's address with its places left open, as the table of pages has it.</param>
/// <param name="Person">Who opens it; null for somebody who is not signed in.</param>
/// <param name="Find">Finds an address that is there in the demo salon.</param>
internal sealed record Address(string Route, string? Person, Func<DemoPortal, Task<string>> Find);

/// <summary>Where each page of the portal is in the demo salon.</summary>
internal static class Addresses
{
    public const string Owner = "Wilhelmina";
    public const string Senior = "Bettina";
    public const string Junior = "Tamsin";
    public const string Newcomer = "Robin";

    // The demo's people and dogs always have the same ids.
    private const string Wilhelmina = "0a11ce00-0000-7000-8000-000000000001";
    private const string Bettina = "0a11ce00-0000-7000-8000-000000000002";
    private const string Tamsin = "0a11ce00-0000-7000-8000-000000000004";
    private const string Perpetua = "0a11ce00-0000-7000-8000-000000000006";
    private const string Robin = "0a11ce00-0000-7000-8000-000000000007";
    private const string Sorrel = "00000d06-0000-7000-8000-000000000008";

    public static readonly IReadOnlyList<Address> All =
    [
        At("/", Owner),
        At("/", Senior),
        At("/", Junior),
        Found("/attempts/{id:guid}", Junior, db => db.Attempts.Where(of => of.Person == new Guid(Tamsin)).Select(of => of.Id)),
        At("/board", Owner),
        At("/board/{person:guid}/{skill}", Senior, $"/board/{Tamsin}/wool"),
        At("/decide", Owner),
        At("/decide/{person:guid}", Owner, $"/decide/{Perpetua}"),
        At("/decide/{person:guid}/{skill}", Owner, $"/decide/{Robin}/smooth"),
        At("/disputes", Owner),
        Found("/disputes/{signOff:guid}", Owner, db => db.Disputes.Where(of => of.AnsweredAt == null).Select(of => of.SignOff)),
        At("/dog-check", Junior),
        At("/dog-check", Owner, $"/dog-check?Form.Dog={Sorrel}&Form.IsAsked=true&Form.Techniques=bath"),
        At("/dogs", Senior),
        At("/dogs/new", Senior),
        At("/dogs/{id:guid}", Senior, $"/dogs/{Sorrel}"),
        At("/error", null),
        At("/flags", Owner),
        new("/flags/{groom:guid}/{person:guid}", Owner, FlaggedAsync),
        Found("/grooms/{id:guid}", Junior, db => GroomsOf(db, Tamsin)),
        Found("/grooms/{id:guid}/complaint", Owner, db => GroomsOf(db, Tamsin)),
        Found("/grooms/{id:guid}/incident", Junior, db => GroomsOf(db, Tamsin)),
        At("/heat", null),
        At("/heat", Junior),
        At("/house", Owner),
        At("/in-today", Senior),
        new("/join/{token}", null, LinkAsync),
        At("/join/{token}", null, "/join/spent"),
        At("/judging", Senior),
        At("/judging/{module}", Senior, "/judging/heat-stroke"),
        At("/judging/{module}/give", Senior, "/judging/heat-stroke/give"),
        At("/judging/{module}/panel", Owner, "/judging/heat-stroke/panel"),
        At("/judging/{module}/panel", Owner, "/judging/heat-stroke/panel?look=true"),
        At("/ledger", Owner),
        At("/ledger/{entry}", Owner, "/ledger/1"),
        At("/log", Junior),
        At("/log/{groom:guid}", Junior, $"/log/01978000-0000-7000-8000-000000000001?dog={Sorrel}"),
        At("/me", Junior),
        At("/me/account", Junior),
        At("/measures", Owner),
        At("/measures/{module}", Owner, "/measures/heat-stroke"),
        At("/measures/{module}/explained", Owner, "/measures/heat-stroke/explained"),
        At("/measures/{module}/questions/{question}", Owner, "/measures/heat-stroke/questions/heat-01"),
        At("/modules", Owner),
        At("/modules/new", Owner),
        new("/modules/{module}/write", Owner, portal => DraftAsync(portal, "blades-and-scissors", "/write")),
        new("/modules/{module}/pictures", Owner, portal => DraftAsync(portal, "blades-and-scissors", "/pictures")),
        new("/modules/{module}/ask", Owner, portal => DraftAsync(portal, "blades-and-scissors", "/ask")),
        new("/modules/{module}/read-over", Owner, portal => DraftAsync(portal, "muzzle-breaks", "/read-over", isAsked: true)),
        At("/people", Owner),
        At("/people/new", Owner),
        At("/people/{id:guid}", Owner, $"/people/{Robin}"),
        At("/people/{id:guid}/change", Owner, $"/people/{Robin}/change"),
        At("/people/{id:guid}/experience", Owner, $"/people/{Robin}/experience"),
        At("/people/{id:guid}/leave", Owner, $"/people/{Robin}/leave"),
        At("/people/{id:guid}/skills", Owner, $"/people/{Tamsin}/skills"),
        At("/people/{id:guid}/ahead", Owner, $"/people/{Tamsin}/ahead"),
        At("/coverage", Owner),
        At("/trust", Owner),
        At("/lapsing", Owner),
        At("/readings/new", Junior),
        At("/reviews", Owner),
        Found("/reviews/{incident:guid}", Owner, db => db.Incidents.Where(of => of.ReviewedAt != null).Select(of => of.Id)),
        Found("/reviews/{incident:guid}", Owner, db => db.Incidents.Where(of => of.ReviewedAt == null).Select(of => of.Id)),
        new("/set-up", null, _ => throw new InvalidOperationException("The page to set up is there only before the first day.")),
        At("/sign-in", null),
        At("/sign-offs", Senior),
        new("/sign-offs/{groom:guid}", Senior, WaitingAsync),
        At("/sign-out", Junior),
        At("/skills", Owner),
        At("/skills/new", Owner),
        At("/skills/suggested", Owner),
        At("/skills/{skill}", Owner, "/skills/wool"),
        At("/stand-downs", Owner),
        At("/stand-downs/{person:guid}", Owner, $"/stand-downs/{Tamsin}"),
        At("/status/{code:int:range(400,599)}", Junior, "/people"),
        At("/status/{code:int:range(400,599)}", null, "/nothing-here"),
        At("/study", Junior),
        At("/study/findings", Owner),
        At("/study/search", Junior, "/study/search?q=blade"),
        At("/study/parcels", Owner),
        new("/study/parcels/brought", Owner, BringAsync),
        At("/study/{module}", Junior, "/study/heat-stroke"),
        At("/study/{module}", Junior, "/study/blades-and-scissors"),
        At("/study/{module}", Junior, "/study/cooling-clips"),
        At("/study/{module}", Junior, "/study/muzzle-breaks"),
        At("/study/{module}/editions", Owner, "/study/heat-stroke/editions"),
        At("/study/{module}/editions/affected", Owner, "/study/heat-stroke/editions/affected"),
        new("/study/{module}/editions/compare", Owner, portal => OwnEditionAsync(portal, Compared)),
        new("/study/{module}/editions/library", Owner, portal => OwnEditionAsync(portal, (_, _) => "library")),
        At("/study/{module}/notes", Senior, "/study/heat-stroke/notes"),
        new("/study/{module}/quiz/{attempt:guid}", Newcomer, portal => BeginAsync(portal, "cooling-clips", "")),
        new("/study/{module}/quiz/{attempt:guid}/hand-in", Newcomer, portal => BeginAsync(portal, "cooling-clips", "/hand-in")),
        new("/study/{module}/quiz/{attempt:guid}/changed", Newcomer, ChangedAsync),
        At("/swatches", null),
        At("/thresholds", Owner),
        At("/thresholds/{skill}", Owner, "/thresholds/wool"),
        At("/welcome", Owner),
    ];

    private static Address At(string route, string? person, string? address = null) =>
        new(route, person, _ => Task.FromResult(address ?? route));

    private static Address Found(string route, string person, Func<AcademyDb, IQueryable<Guid>> ask) =>
        new(route, person, async portal => Filled(route, await FirstAsync(portal, ask)));

    private static string Filled(string route, Guid id) => route[..route.IndexOf('{')] + id + route[(route.IndexOf('}') + 1)..];

    private static Task<Guid> FirstAsync(DemoPortal portal, Func<AcademyDb, IQueryable<Guid>> ask) =>
        portal.Portal.DoAsync<AcademyDb, Guid>(db => ask(db).OrderBy(id => id).LastAsync());

    private static IQueryable<Guid> GroomsOf(AcademyDb db, string person) =>
        db.Grooms.Where(of => of.By == new Guid(person) && of.State == GroomState.Told).Select(of => of.Id);

    private static async Task<string> WaitingAsync(DemoPortal portal)
    {
        var waits = await portal.Portal.DoAsync<AcademyDb, GroomDoerRow>(db =>
            db.GroomDoers.Where(of => of.SignOff == null && of.Watcher != null).OrderBy(of => of.EndedAt).LastAsync()
        );
        return $"/sign-offs/{waits.Groom}?person={waits.Person}";
    }

    private static async Task<string> LinkAsync(DemoPortal portal)
    {
        var salon = await portal.Portal.DoAsync<RecordBook, SalonId?>(book => book.OnlySalonAsync(default));
        return await portal.Portal.DoAsync<Links, string>(links =>
            links.MakeAsync(salon!.Value, new PersonId(new Guid(Perpetua)))
        );
    }

    // A groom of the newcomer's as if nobody had watched it.
    private static async Task<string> FlaggedAsync(DemoPortal portal)
    {
        var salon = (await portal.Portal.DoAsync<RecordBook, SalonId?>(book => book.OnlySalonAsync(default)))!.Value;
        var id = await FirstAsync(portal, db => db.GroomDoers.Where(of => of.Person == new Guid(Robin)).Select(of => of.Groom));
        var now = portal.Portal.Now;
        var flagged = await portal.Portal.DoAsync<RecordBook, Decision>(async book =>
        {
            var told = (await book.GroomAsync(salon, new GroomId(id), default))!.Record.Story!.Groom with { Watcher = null };
            var salons = await book.SalonAsync(salon, default);
            var then = new KnownThen(
                (await book.DogAsync(salon, told.Dog, default))!.Record,
                await book.TeamAsync(salon, now, default),
                new HashSet<PersonId>(),
                salons.House,
                salons.Zone
            );
            return Flagging.Flag(told, [], then);
        });
        await portal.Portal.DoAsync<Ledger, Kept>(ledger =>
            ledger.KeepAsync(
                salon,
                (Granted)flagged,
                new Hand(new PersonId(new Guid(Robin)), "a test", now),
                new(portal.Portal.New())
            )
        );
        return $"/flags/{id}/{Robin}";
    }

    private static async Task<string> BringAsync(DemoPortal portal)
    {
        var salon = (await portal.Portal.DoAsync<RecordBook, SalonId?>(book => book.OnlySalonAsync(default)))!.Value;
        var book = await portal.Portal.DoAsync<RecordBook, SalonBook>(records => records.SalonAsync(salon, default));
        var files = ModuleFiles.Of(portal.Lesson("heat-stroke"));
        portal
            .Portal.Services.GetRequiredService<ParcelRack>()
            .Put(
                salon,
                book.People.First(person => person.Role == Role.Owner).Id,
                [
                    LookedThrough.Of(files),
                    LookedThrough.Of(files with { Name = "broken" }),
                    LookedThrough.Of(files with { Text = files.Text.Replace("Heat", "Warmth", StringComparison.Ordinal) }),
                ]
            );
        return "/study/parcels/brought";
    }

    private static string Compared(string before, string after) => $"compare?from={before}&to={after}";

    // The salon has a sentence of its own in one lesson.
    private static async Task<string> OwnEditionAsync(DemoPortal portal, Func<string, string, string> address)
    {
        const string Module = "scissors-by-kind";
        var salon = (await portal.Portal.DoAsync<RecordBook, SalonId?>(book => book.OnlySalonAsync(default)))!.Value;
        var book = await portal.Portal.DoAsync<RecordBook, SalonBook>(records => records.SalonAsync(salon, default));
        var librarys = portal.Lesson(Module);
        var own =
            book.OwnModules.FirstOrDefault(one => one.Module.Value == Module)?.ContentHash
            ?? await portal.Portal.PublishAsync(
                salon,
                book.People.First(person => person.Role == Role.Owner),
                Module,
                "Where ours hang.",
                catchUpDays: null,
                ("\n# Quiz", "\nOurs hang beside the door.\n\n# Quiz")
            );
        return $"/study/{Module}/editions/{address(librarys.Module.Hash, own)}";
    }

    // A draft of the senior's, so that the owner may read it over.
    private static async Task<string> DraftAsync(DemoPortal portal, string module, string part, bool isAsked = false)
    {
        var salon = await portal.Portal.DoAsync<RecordBook, SalonId?>(book => book.OnlySalonAsync(default));
        var lesson = portal.Lesson(module);
        var now = portal.Portal.Now;
        var draft = new Draft(
            new ModuleName(module),
            EditionNumbers.Write(lesson.Text, edition: lesson.Module.Edition + 1, safetyCriticalSince: 1),
            new PersonId(new Guid(Bettina)),
            now,
            isAsked ? now : null,
            "Shorter sentences.",
            CatchUpBy: null,
            isAsked ? null : new Returned(new PersonId(new Guid(Wilhelmina)), "Say which blade."),
            Version: 1
        );
        await portal.Portal.DoAsync<DraftBook, bool>(book =>
            book.BeginAsync(salon!.Value, draft, ModuleFiles.Of(lesson).Pictures)
        );
        return $"/modules/{module}{part}";
    }

    private static Task<string> BeginAsync(DemoPortal portal, string module, string part)
    {
        var hash = portal.Lesson(module).Module.Hash;
        return SitAsync(portal, module, hash, part);
    }

    private static Task<string> ChangedAsync(DemoPortal portal) =>
        SitAsync(portal, "muzzle-breaks", "an edition that is not here any more", "/changed");

    private static async Task<string> SitAsync(DemoPortal portal, string module, string hash, string part)
    {
        var salon = await portal.Portal.DoAsync<RecordBook, SalonId?>(book => book.OnlySalonAsync(default));
        var sitting = new Sitting(
            new AttemptId(portal.Portal.New()),
            new PersonId(new Guid(Robin)),
            new ModuleName(module),
            hash,
            IsRefresher: false,
            Seed: 7,
            portal.Portal.Now,
            ReadOutBy: null
        );
        var begun = await portal.Portal.DoAsync<QuizBook, AttemptId>(quizzes => quizzes.BeginAsync(salon!.Value, sitting));
        return $"/study/{module}/quiz/{begun.Value}{part}";
    }
}
