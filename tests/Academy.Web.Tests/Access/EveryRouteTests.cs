using System.Net;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Tests.Hosting;
using Academy.Web.Tests.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Infrastructure;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Mvc.RazorPages.Infrastructure;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Access;

/// <summary>
/// Every route of the portal against everybody: generated from the routes themselves, so that none can be forgotten. OWASP ASVS
/// 5.0.0, V8.2.1, V8.2.2, V8.3.1 and V3.5.1; OWASP Top 10:2025, A01.
/// </summary>
public sealed class EveryRouteTests
{
    [Fact]
    public async Task Each_page_opens_for_those_of_its_policy_and_for_nobody_else()
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync();
        var pages = await PagesAsync(portal);

        foreach (var (person, visitor) in await EverybodyAsync(portal, cast))
        foreach (var page in pages)
        {
            var answer = await visitor.GetAsync(page.Path(cast.Owner));
            HeadersTests.AssertHeaders(answer.Message);
            AssertAnswer(page, person, answer);
        }
        Assert.True(pages.Count > 12, $"Only {pages.Count} pages were found.");
    }

    [Fact]
    public async Task The_owner_of_another_salon_finds_nothing_of_this_one()
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync("Quillfeather and Daughters");
        var other = await portal.OpenSalonAsync("The Dry Nose");
        await portal.KeepAsync(
            cast.Salon,
            Staffing.Describe(cast.Junior with { Name = "Zephyrine" }, cast.Junior, cast.Owner, owners: 1),
            cast.Owner
        );
        using var stranger = await portal.AsAsync(other, other.Owner);

        foreach (var page in await PagesAsync(portal))
        {
            var answer = await stranger.GetAsync(page.Path(cast.Junior));
            var html = await answer.Message.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.DoesNotContain("Zephyrine", html, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain(
                cast.Junior.Id.Value.ToString(),
                Words(html, page, cast.Junior),
                StringComparison.OrdinalIgnoreCase
            );
            if (page.NamesSomething && page.Policy != Page.Anybody)
                Assert.True(answer.Status == HttpStatusCode.NotFound, $"{page.Route}: {answer.Status}");
        }
    }

    [Fact]
    public async Task Every_post_without_its_token_is_refused_whoever_sends_it()
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync();
        using var owner = await portal.AsAsync(cast, cast.Owner);

        foreach (var page in (await PagesAsync(portal)).Where(page => !page.TakesAnyPost))
        {
            var answer = await owner.PostBareAsync(page.Path(cast.Owner), ("Name", "Biscuit"));
            Assert.True(answer.Status == HttpStatusCode.BadRequest, $"{page.Route}: {answer.Status}");
        }
    }

    [Fact]
    public async Task A_post_by_the_wrong_person_is_refused_before_its_token_is_looked_at()
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync();

        foreach (var (person, visitor) in await EverybodyAsync(portal, cast))
        foreach (var page in (await PagesAsync(portal)).Where(page => !page.OpensFor(person)))
        {
            var answer = await visitor.PostBareAsync(page.Path(cast.Owner));
            Assert.True(answer.Status is HttpStatusCode.Forbidden or HttpStatusCode.Redirect, $"{page.Route}: {answer.Status}");
        }
    }

    [Fact]
    public async Task Looking_changes_nothing()
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync();
        using var owner = await portal.AsAsync(cast, cast.Owner);
        var before = await VersionAsync(portal, cast);

        foreach (var page in await PagesAsync(portal))
            await owner.GetAsync(page.Path(cast.Owner));

        Assert.Equal(before, await VersionAsync(portal, cast));
    }

    [Fact]
    public async Task Whatever_else_answers_names_its_policy_or_is_open_on_purpose()
    {
        await using var portal = new PortalHost();
        var others = Routes(portal)
            .Where(route => route.Metadata.GetMetadata<PageActionDescriptor>() is null && !IsOfUnpublishedBuild(route))
            .ToList();

        Assert.NotEmpty(others);
        Assert.All(
            others,
            route =>
                Assert.True(
                    route.Metadata.GetMetadata<IAllowAnonymous>() is not null
                        || route.Metadata.GetMetadata<IAuthorizeData>()?.Policy is not null,
                    route.DisplayName
                )
        );
    }

    private static void AssertAnswer(Page page, Person? person, Answer answer)
    {
        var what = $"{page.Route} for {person?.Name ?? "nobody"}: {answer.Status} {answer.Location}";
        if (page.OpensFor(person))
        {
            Assert.True(
                (int)answer.Status < 500 && answer.Status is not (HttpStatusCode.Forbidden or HttpStatusCode.Unauthorized),
                what
            );
            Assert.False(person is not null && answer.Location?.StartsWith("/sign-in", StringComparison.Ordinal) is true, what);
        }
        else if (person is null)
            Assert.True(answer.Location?.StartsWith("/sign-in?back=", StringComparison.Ordinal) is true, what);
        else
            Assert.True(answer.Status == HttpStatusCode.Forbidden, what);
    }

    private static async Task<List<(Person? Person, Visitor Visitor)>> EverybodyAsync(PortalHost portal, Cast cast)
    {
        var deputy = cast.SecondJunior with { Name = "a deputy", IsDeputy = true };
        await portal.KeepAsync(cast.Salon, Staffing.Describe(deputy, cast.SecondJunior, cast.Owner, owners: 1), cast.Owner);
        var everybody = new List<(Person?, Visitor)> { (null, portal.Anyone()) };
        foreach (var person in new[] { cast.Junior, deputy, cast.Senior, cast.Owner })
            everybody.Add((person, await portal.AsAsync(cast, person)));
        return everybody;
    }

    private static Task<long> VersionAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<RecordBook, long>(book => book.VersionAsync(cast.Salon, TestContext.Current.CancellationToken));

    // A page may repeat the address under which it was asked for; that is no news to whoever asked.
    private static string Words(string html, Page page, Person person) =>
        html.Replace(page.Path(person), "", StringComparison.OrdinalIgnoreCase)
            .Replace(Uri.EscapeDataString(page.Path(person)), "", StringComparison.OrdinalIgnoreCase);

    // A build that was not published looks for files that came since; nobody is let in by it.
    private static bool IsOfUnpublishedBuild(RouteEndpoint route) => route.RoutePattern.RawText == "{**path:file}";

    private static IEnumerable<RouteEndpoint> Routes(PortalHost portal) =>
        portal
            .Services.GetRequiredService<IEnumerable<EndpointDataSource>>()
            .SelectMany(source => source.Endpoints)
            .OfType<RouteEndpoint>();

    // What a page model says of itself is known only of a page that is loaded.
    internal static async Task<List<Page>> PagesAsync(PortalHost portal)
    {
        var loader = portal.Services.GetRequiredService<PageLoader>();
        var pages = new List<Page>();
        foreach (
            var page in portal
                .Services.GetRequiredService<IActionDescriptorCollectionProvider>()
                .ActionDescriptors.Items.OfType<PageActionDescriptor>()
        )
        {
            var loaded = await loader.LoadAsync(page, EndpointMetadataCollection.Empty);
            pages.Add(Page.Of(loaded));
        }
        return pages;
    }

    internal sealed record Page(RoutePattern Pattern, string Policy, bool TakesAnyPost)
    {
        public const string Anybody = "anybody";
        private const string Nothing = "nothing: the page model must name a policy";

        public string Route => "/" + Pattern.RawText;

        public bool NamesSomething => Pattern.Parameters.Any(part => part.ParameterPolicies.Any(rule => rule.Content == "guid"));

        public static Page Of(CompiledPageActionDescriptor page)
        {
            var said = new EndpointMetadataCollection(page.EndpointMetadata ?? []);
            return new Page(
                RoutePatternFactory.Parse(page.AttributeRouteInfo!.Template!),
                said.GetMetadata<IAllowAnonymous>() is not null ? Anybody : said.GetMetadata<IAuthorizeData>()?.Policy ?? Nothing,
                said.GetMetadata<IgnoreAntiforgeryTokenAttribute>() is not null
            );
        }

        /// <summary>The address of this page for something of this person's: each id in it is hers.</summary>
        public string Path(Person person) =>
            "/"
            + string.Join(
                '/',
                Pattern.PathSegments.Select(segment =>
                    string.Concat(
                        segment.Parts.Select(part =>
                            part switch
                            {
                                RoutePatternLiteralPart words => words.Content,
                                RoutePatternParameterPart { Name: "code" } => "404",
                                RoutePatternParameterPart { ParameterPolicies: [{ Content: "guid" }, ..] } =>
                                    person.Id.Value.ToString(),
                                _ => "wool",
                            }
                        )
                    )
                )
            );

        public bool OpensFor(Person? person) => Policy == Anybody || (person is not null && Policies.Opens[Policy](person));
    }
}
