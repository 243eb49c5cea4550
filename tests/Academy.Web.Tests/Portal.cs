using AngleSharp;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Academy.Web.Tests;

/// <summary>The portal as a visitor meets it: started in the test's own process, read as HTML.</summary>
public sealed class Portal : WebApplicationFactory<Program>
{
    private readonly Dictionary<string, string> _settings = new(StringComparer.Ordinal);
    private readonly List<Action<IServiceCollection>> _replacements = [];
    private readonly string _folder = Directory.CreateTempSubdirectory("academy-").FullName;

    public Notes Log { get; } = new();

    /// <summary>The salon's own folder for its colour file and logo.</summary>
    public string OwnFolder => Directory.CreateDirectory(Path.Combine(_folder, "own")).FullName;

    public Portal With(string setting, string value)
    {
        _settings[setting] = value;
        return this;
    }

    public Portal With<T>(T part)
        where T : class
    {
        _replacements.Add(parts => parts.AddSingleton(part));
        return this;
    }

    public HttpClient Visitor(bool https = false) =>
        CreateClient(
            new WebApplicationFactoryClientOptions
            {
                AllowAutoRedirect = false,
                BaseAddress = new Uri(https ? "https://salon.example/" : "http://salon.example/"),
            }
        );

    public static async Task<IHtmlDocument> ReadAsync(HttpResponseMessage answer)
    {
        var html = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var address = answer.RequestMessage!.RequestUri!.ToString();
        var page = await BrowsingContext
            .New(Configuration.Default)
            .OpenAsync(request => request.Content(html).Address(address), TestContext.Current.CancellationToken);
        return (IHtmlDocument)page;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("Demo", "true");
        builder.UseSetting("Site:FillDemo", "false");
        builder.UseSetting("Data:Folder", _folder);
        builder.UseSetting("Modules:Folder", Directory.CreateDirectory(Path.Combine(_folder, "modules")).FullName);
        foreach (var (setting, value) in _settings)
        {
            builder.UseSetting(setting, value);
        }

        builder.ConfigureLogging(log => log.ClearProviders().AddProvider(Log));
        builder.ConfigureTestServices(parts =>
        {
            parts.AddSingleton<IDataProtectionProvider, EphemeralDataProtectionProvider>();
            parts.AddSingleton(TextWriter.Null);
            _replacements.ForEach(replace => replace(parts));
        });
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(_folder))
        {
            Directory.Delete(_folder, recursive: true);
        }
    }
}

/// <summary>What the portal wrote into its log.</summary>
public sealed class Notes : ILoggerProvider, ILogger
{
    private readonly List<string> _lines = [];

    public IReadOnlyList<string> Lines
    {
        get
        {
            lock (_lines)
            {
                return [.. _lines];
            }
        }
    }

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Warning;

    public void Log<TState>(
        LogLevel logLevel,
        EventId eventId,
        TState state,
        Exception? exception,
        Func<TState, Exception?, string> formatter
    )
    {
        lock (_lines)
        {
            _lines.Add(formatter(state, exception));
        }
    }

    public void Dispose() { }
}
