using System.Net.Http.Headers;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using SkiaSharp;

namespace Academy.Web.Tests.Features.Writing;

/// <summary>A salon in which Rosa writes modules beside the owner, and the lesson about towels is in the library.</summary>
internal sealed class Desk : IAsyncDisposable
{
    public const string Module = "blades-and-scissors";
    public const string Write = $"/modules/{Module}/write";
    public const string Pictures = $"/modules/{Module}/pictures";
    public const string Ask = $"/modules/{Module}/ask";
    public const string ReadOver = $"/modules/{Module}/read-over";
    public const string Writing = "form.writing";
    public const string Publishing = "section[aria-labelledby=publish] form";
    public const string GivingBack = "form[action*=GiveBack]";

    private readonly TestModules _modules;

    private Desk(TestModules modules, PortalHost portal, Cast cast) => (_modules, Portal, Cast) = (modules, portal, cast);

    public PortalHost Portal { get; }

    public Cast Cast { get; }

    public static async Task<Desk> OpenAsync(bool rosaWrites = true, bool hasModule = true)
    {
        var modules = new TestModules();
        if (hasModule)
            modules.With(Module);
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        Desk desk = new(modules, portal, await portal.OpenSalonAsync());
        if (rosaWrites)
            await desk.LetWriteAsync(desk.Cast.Senior);
        return desk;
    }

    public Task LetWriteAsync(Person person) =>
        Portal.KeepAsync(
            Cast.Salon,
            Staffing.Describe(person with { WritesModules = true }, person, Cast.Owner, owners: 1),
            Cast.Owner
        );

    public Task<Visitor> AsAsync(Person person) => Portal.AsAsync(Cast, person);

    /// <summary>Somebody begins to change the module.</summary>
    public static async Task<Answer> BeginAsync(Visitor writer) => await writer.SendAsync("/modules", $"#change-{Module} form");

    public static async Task<Answer> SaveAsync(Visitor writer, string text) =>
        await (await writer.GetAsync(Write)).Form(Writing).With([("Form.Text", text)]).SendAsync();

    /// <summary>The text as it is saved, each piece of it replaced.</summary>
    public static async Task<string> TextAsync(Visitor writer, params IEnumerable<(string From, string To)> changes)
    {
        var text = (await writer.GetAsync(Write)).Form(Writing)["Form.Text"]!.ReplaceLineEndings("\n");
        foreach (var (from, to) in changes)
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        return text;
    }

    public static Task<Answer> AskAsync(
        Visitor writer,
        string change = "Three towels, not two.",
        string kind = "words",
        string by = ""
    ) => writer.SendAsync(Ask, ("Form.Change", change), ("Form.Kind", kind), ("Form.CatchUpBy", by));

    public Task<Draft?> DraftAsync(string module = Module) =>
        Portal.DoAsync<DraftBook, Draft?>(drafts => drafts.FindAsync(Cast.Salon, new(module), default));

    public static byte[] Photo(SKEncodedImageFormat kind = SKEncodedImageFormat.Png, int width = 320, int height = 200)
    {
        using SKBitmap bitmap = new(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(SKColors.CornflowerBlue);
        using var written = bitmap.Encode(kind, 90);
        return written.ToArray();
    }

    public async ValueTask DisposeAsync()
    {
        await Portal.DisposeAsync();
        _modules.Dispose();
    }
}

internal static class SendingFiles
{
    /// <summary>Sends a form of a page with a file in it.</summary>
    public static async Task<Answer> SendFileAsync(
        this Visitor visitor,
        string page,
        string form,
        (string Field, string Name, byte[] Bytes) file,
        params IEnumerable<(string Name, string Value)> typed
    )
    {
        var shown = await visitor.GetAsync(page);
        var drawn = shown.Form(form);
        using MultipartFormDataContent content = new();
        foreach (var (name, value) in typed.Prepend(("__RequestVerificationToken", drawn["__RequestVerificationToken"]!)))
            content.Add(new StringContent(value), name);
        if (file.Name.Length > 0)
        {
            ByteArrayContent bytes = new(file.Bytes);
            bytes.Headers.ContentType = new MediaTypeHeaderValue("application/octet-stream");
            content.Add(bytes, file.Field, file.Name);
        }
        var to = new Uri(new Uri(drawn.Drawn.BaseUri), drawn.Drawn.GetAttribute("action") ?? "").PathAndQuery;
        var message = await visitor.Client.PostAsync(to, content, TestContext.Current.CancellationToken);
        return new Answer(visitor, message, await Tests.Portal.ReadAsync(message));
    }
}
