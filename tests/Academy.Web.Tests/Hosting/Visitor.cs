using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Hosting;

/// <summary>Somebody with a browser: opens pages, fills in forms, is led on. Redirects are followed only when asked to.</summary>
public sealed class Visitor(HttpClient client, IDictionary<string, string> cookies) : IDisposable
{
    /// <summary>For what a form cannot say.</summary>
    public HttpClient Client => client;

    /// <summary>What the browser keeps, by name: it may be copied into another one.</summary>
    public IDictionary<string, string> Cookies => cookies;

    public async Task<Answer> GetAsync(string path) => await AnswerAsync(new HttpRequestMessage(HttpMethod.Get, path));

    /// <summary>Opens a page, fills in its form (the first in <c>main</c>, unless another is named) and sends it.</summary>
    public async Task<Answer> SendAsync(string path, string? form, params IEnumerable<(string Name, string Value)> typed) =>
        await (await GetAsync(path)).Form(form).With(typed).SendAsync();

    /// <inheritdoc cref="SendAsync(string, string?, IEnumerable{ValueTuple{string, string}})"/>
    public Task<Answer> SendAsync(string path, params IEnumerable<(string Name, string Value)> typed) =>
        SendAsync(path, form: null, typed);

    /// <summary>Posts what no page of the portal offered.</summary>
    public Task<Answer> PostBareAsync(string path, params IEnumerable<(string Name, string Value)> fields) =>
        AnswerAsync(
            new HttpRequestMessage(HttpMethod.Post, path)
            {
                Content = new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value))),
            }
        );

    /// <summary>Posts what is no plain form: a file.</summary>
    public Task<Answer> PostAsync(string path, HttpContent content) =>
        AnswerAsync(new HttpRequestMessage(HttpMethod.Post, path) { Content = content });

    public void Dispose() => client.Dispose();

    private async Task<Answer> AnswerAsync(HttpRequestMessage request)
    {
        var answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return new Answer(this, answer, await Portal.ReadAsync(answer));
    }
}

/// <summary>What came back.</summary>
public sealed record Answer(Visitor Visitor, HttpResponseMessage Message, IHtmlDocument Page)
{
    public HttpStatusCode Status => Message.StatusCode;

    public string? Location => Message.Headers.Location?.OriginalString;

    public string Heading => Page.QuerySelector("h1")?.TextContent.Trim() ?? "";

    /// <summary>All words of the page's own part, spaces folded.</summary>
    public string Words => Folded(Page.QuerySelector("main") ?? Page.Body!);

    /// <summary>The lines of the error summary, without their numbers.</summary>
    public IReadOnlyList<string> Problems =>
        [.. Page.QuerySelectorAll(".mend li").Select(line => Folded(line.QuerySelector(".line > :last-child")!))];

    /// <summary>The sentence that says what was done.</summary>
    public string? Said => Page.QuerySelector(".said") is { } said ? Folded(said) : null;

    /// <summary>One form of the page: the first in <c>main</c> that posts, or the one that the selector names.</summary>
    public Form Form(string? selector = null) =>
        new(
            Visitor,
            Page.QuerySelector<IHtmlFormElement>(selector ?? "main form[method=post]")
                ?? throw new InvalidOperationException($"{Message.RequestMessage!.RequestUri}: no form {selector} in: {Words}")
        );

    /// <summary>Where a redirect leads.</summary>
    public Task<Answer> FollowAsync() =>
        Visitor.GetAsync(Location ?? throw new InvalidOperationException($"{Status} leads nowhere: {Words}"));

    public static string Folded(IElement part) =>
        string.Join(' ', part.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

/// <summary>A form as it stands on a page, with what was typed into it.</summary>
public sealed record Form(Visitor Visitor, IHtmlFormElement Drawn)
{
    private readonly List<(string Name, string Value)> _fields = [.. FieldsOf(Drawn)];

    public string? this[string name] => _fields.Where(field => field.Name == name).Select(field => field.Value).FirstOrDefault();

    public IReadOnlyList<string> All(string name) => [.. _fields.Where(field => field.Name == name).Select(field => field.Value)];

    /// <summary>Types: each name replaces what stood there, and may be given several times.</summary>
    public Form With(params IEnumerable<(string Name, string Value)> typed)
    {
        var all = typed.ToList();
        _fields.RemoveAll(field => all.Exists(one => one.Name == field.Name));
        _fields.AddRange(all);
        return this;
    }

    public Form Without(string name)
    {
        _fields.RemoveAll(field => field.Name == name);
        return this;
    }

    public Task<Answer> SendAsync() => Visitor.PostBareAsync(To(Drawn.GetAttribute("action")), _fields);

    /// <summary>Presses one button of the form, which may carry a value and lead elsewhere.</summary>
    public Task<Answer> PressAsync(string selector)
    {
        var button =
            Drawn.QuerySelector<IHtmlButtonElement>(selector)
            ?? throw new InvalidOperationException($"no button {selector} in: {Drawn.TextContent}");
        var carried = button.Name is { Length: > 0 } name ? [(name, button.Value)] : Array.Empty<(string, string)>();
        return Visitor.PostBareAsync(
            To(button.GetAttribute("formaction") ?? Drawn.GetAttribute("action")),
            [.. _fields, .. carried]
        );
    }

    /// <summary>Sends it where a script would.</summary>
    public Task<Answer> SendToAsync(string address) => Visitor.PostBareAsync(To(address), _fields);

    private string To(string? address) =>
        address is { Length: > 0 } ? new Uri(new Uri(Drawn.BaseUri), address).PathAndQuery : new Uri(Drawn.BaseUri).PathAndQuery;

    private static IEnumerable<(string, string)> FieldsOf(IHtmlFormElement form) =>
        form.QuerySelectorAll<IHtmlElement>("input[name], select[name], textarea[name]")
            .SelectMany(ValuesOf)
            .Where(field => field.Item2 is not null);

    private static IEnumerable<(string, string)> ValuesOf(IHtmlElement control) =>
        control switch
        {
            IHtmlInputElement { Type: "submit" or "button" } => [],
            IHtmlInputElement { Type: "checkbox" or "radio", IsChecked: false } => [],
            IHtmlInputElement input => [(input.Name!, input.Value)],
            IHtmlTextAreaElement area => [(area.Name!, area.Value)],
            IHtmlSelectElement select => select.Options.Where(one => one.IsSelected).Select(one => (select.Name!, one.Value)),
            _ => [],
        };
}
