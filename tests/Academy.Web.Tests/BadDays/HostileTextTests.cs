using System.Net;
using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Web.Tests.Access;
using Academy.Web.Tests.Features;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.BadDays;

/// <summary>
/// Whatever anybody types into whatever field: the page shows it as text or refuses it with words, and nothing of ours breaks.
/// The strings follow the kinds of OWASP ASVS 5.0, V1.2 and V2.2: markup, attribute break-out, direction override, length,
/// characters outside the first plane, nothing, halves of a character.
/// </summary>
public sealed class HostileTextTests
{
    private const string Script = "<script>alert(1)</script>";
    private const string Broken = "\"><img src=x onerror=alert(1)>";
    private const string Override = "\u202Etxt.exe";

    public static TheoryData<string> Texts =>
        [
            Script,
            Broken,
            Override,
            new string('x', 10_000),
            "🐩💥 e\u0301",
            "null\0byte",
            "half \ud83d a dog",
            "{{7*7}} ' or 1=1 --",
        ];

    [Theory]
    [MemberData(nameof(Texts))]
    public async Task Typed_into_every_field_of_every_form_it_breaks_nothing_and_comes_back_as_text(string text)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var addresses = await AddressesAsync(portal, cast, plain: true);
        var forms = 0;
        foreach (var person in new[] { cast.Junior, cast.Senior, cast.Owner })
        foreach (var address in addresses.OrderBy(one => one.EndsWith("/leave", StringComparison.Ordinal)))
        {
            // Signed in anew for each page: some forms end what is signed in.
            using var visitor = await portal.AsAsync(cast, person);
            var page = await visitor.GetAsync(address);
            AssertIsText(address, page);
            foreach (var form in FormsOf(page))
            {
                forms++;
                var answer = await Filled(page, form, text).SendAsync();
                AssertIsText($"{address} sent by {person.Name}", answer);
                if (answer.Status == HttpStatusCode.Redirect)
                    AssertIsText($"{answer.Location} after {address}", await answer.FollowAsync());
            }
        }

        Assert.InRange(forms, 50, 1000);
        Assert.DoesNotContain(portal.Log.Lines, line => line.Contains("Exception", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Script)]
    [InlineData(Broken)]
    [InlineData(Override)]
    public async Task Kept_in_the_book_it_is_text_on_every_page_for_everybody(string text)
    {
        await using var portal = new PortalHost();
        var cast = await portal.OpenSalonAsync(text);
        var addresses = await AddressesAsync(portal, cast, plain: false, text);
        var seen = 0;
        foreach (var person in cast.Everybody)
        {
            using var visitor = await portal.AsAsync(cast, person);
            foreach (var address in addresses)
            {
                var page = await visitor.GetAsync(address);
                AssertIsText($"{address} for {person.Role}", page);
                if (page.Page.Body!.TextContent.Contains(text, StringComparison.Ordinal))
                    seen++;
            }
        }

        Assert.True(seen > 60, $"the text stood on {seen} pages only");
    }

    /// <summary>Every page of the product, with something on it.</summary>
    private static async Task<IReadOnlyList<string>> AddressesAsync(PortalHost portal, Cast cast, bool plain, string text = "")
    {
        var said = plain ? "Neat feet." : text;
        if (!plain)
            foreach (var person in cast.Everybody)
                await portal.KeepAsync(
                    cast.Salon,
                    Staffing.Describe(person with { Name = $"{person.Name} {text}" }, person, cast.Owner, owners: 1),
                    cast.Owner
                );
        await portal.DeclareAsync(cast, cast.Senior, "wire", "bath", "brushing");
        portal.Clock.Advance(TimeSpan.FromHours(2));
        var dog = await portal.MeetAsync(
            cast,
            one => plain ? one : one with { Name = $"Biscuit {text}", Breed = $"Border {text}", Client = $"Smith {text}" }
        );
        var groom = await portal.GroomAsync(
            cast,
            dog,
            cast.Junior,
            cast.Senior,
            told => told with { Notes = new Words(said), EndedEarly = true }
        );
        var signed = await portal.SignAsync(cast, cast.Senior, groom, suits: false, said);
        await portal.DisputeAsync(cast, groom, signed, said);
        var incident = await portal.CutAsync(cast, groom, cast.Senior);
        var started = await portal.StartAsync(cast, dog, cast.Junior, cast.Senior);
        var alone = await portal.LogAsync(cast, cast.Junior, watcher: null, dog);
        var pages = (await EveryRouteTests.PagesAsync(portal)).Where(page =>
            !page.Route.Contains("sign-out", StringComparison.Ordinal)
        );
        return
        [
            .. pages.SelectMany(page => cast.Everybody.Take(4).Select(page.Path)).Distinct(StringComparer.Ordinal),
            $"/dogs/{dog.Id.Value}",
            $"/dog-check?dog={dog.Id.Value}",
            $"/log?dog={dog.Id.Value}",
            $"/log/{started.Value}",
            $"/log/{portal.New()}?dog={dog.Id.Value}",
            $"/grooms/{groom.Id.Value}",
            $"/grooms/{groom.Id.Value}/incident",
            $"/grooms/{groom.Id.Value}/complaint",
            $"/sign-offs/{groom.Id.Value}?person={cast.Junior.Id.Value}",
            $"/disputes/{signed.Id.Value}",
            $"/reviews/{incident.Value}",
            $"/flags/{alone.Id.Value}/{cast.Junior.Id.Value}",
            $"/board/{cast.Junior.Id.Value}/wire",
        ];
    }

    private static IEnumerable<IHtmlFormElement> FormsOf(Answer page) =>
        page.Page.QuerySelectorAll<IHtmlFormElement>("main form[method=post]");

    // The first of every choice is taken, so that words are read at all and not only the choice that lacks.
    private static Form Filled(Answer page, IHtmlFormElement drawn, string text)
    {
        var form = new Form(page.Visitor, drawn);
        foreach (var control in drawn.QuerySelectorAll<IHtmlElement>("input[name], textarea[name]"))
            if (control is IHtmlTextAreaElement { Name: { } area })
                form.With((area, text));
            else if (control is IHtmlInputElement { Type: "text" or "search" or "email" or "tel" or "password", Name: { } name })
                form.With((name, text));
            else if (control is IHtmlInputElement { Type: "radio", Name: { } choice, Value: { } value } && form[choice] is null)
                form.With((choice, value));
        return form;
    }

    private static void AssertIsText(string where, Answer answer)
    {
        Assert.True((int)answer.Status < 500, $"{where}: {answer.Status} {answer.Words}");
        var raw = answer.Page.Source.Text;
        Assert.False(raw.Contains("<script>alert", StringComparison.OrdinalIgnoreCase), where);
        Assert.False(raw.Contains("<img src=x", StringComparison.OrdinalIgnoreCase), where);
        Assert.False(raw.Contains('\u202E', StringComparison.Ordinal), where);
        Assert.Empty(answer.Page.QuerySelectorAll("[onerror], main script:not([src])"));
    }
}
