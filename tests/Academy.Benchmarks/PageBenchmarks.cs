using System.Net;
using System.Net.Http.Headers;
using Academy.Storage;
using BenchmarkDotNet.Attributes;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Benchmarks;

/// <summary>
/// The board of 20 people and 35 skills and the check of one dog, asked of the whole portal over a real database file with 30,000
/// and with 300,000 grooms, beside a page that reads and draws nothing. Neither may grow with the log.
/// </summary>
[MemoryDiagnoser]
[Config(typeof(InThisProcess))]
public class PageBenchmarks : IAsyncDisposable
{
    private BenchPortal _portal = null!;
    private HttpClient _owner = null!;
    private HttpClient _nobody = null!;
    private EntityTagHeaderValue _tag = null!;

    /// <summary>Grooms in the log.</summary>
    [Params(30_000, 300_000)]
    public int Grooms { get; set; }

    /// <summary>Makes the salon, or finds it made, and signs its owner in.</summary>
    [GlobalSetup]
    public async Task StartAsync()
    {
        _portal = new BenchPortal(await BigSalon.FolderAsync(Grooms));
        _owner = await _portal.AsAsync(BigSalon.Owner);
        _nobody = _portal.CreateClient();
        using var board = await _owner.GetAsync("/board");
        _tag = board.Headers.ETag ?? throw new InvalidOperationException("/board has no entity tag.");
    }

    /// <summary>Stops the portal.</summary>
    [GlobalCleanup]
    public async ValueTask DisposeAsync()
    {
        _owner.Dispose();
        _nobody.Dispose();
        await _portal.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    /// <summary>The page for a wrong address, signed out: frame, headers and Razor, and nothing else.</summary>
    [Benchmark(Baseline = true)]
    public Task<int> BarePage() => AskAsync(_nobody, "/status/404");

    /// <summary>The same page for somebody who is signed in: her session, her salon and her menu besides.</summary>
    [Benchmark]
    public Task<int> SignedInPage() => AskAsync(_owner, "/status/404");

    /// <summary>The board, asked by a browser that has it still: nothing was told in between.</summary>
    [Benchmark]
    public async Task<int> BoardUnchanged()
    {
        using var asks = new HttpRequestMessage(HttpMethod.Get, "/board");
        asks.Headers.IfNoneMatch.Add(_tag);
        using var answer = await _owner.SendAsync(asks);
        return answer.StatusCode == HttpStatusCode.NotModified
            ? 0
            : throw new InvalidOperationException($"/board answered {answer.StatusCode}.");
    }

    /// <summary>The board, looked at again by a browser that has forgotten it: nothing was told in between.</summary>
    [Benchmark]
    public Task<int> BoardAgain() => AskAsync(_owner, "/board");

    /// <summary>The board after something was told, the telling included: standings are worked out and the table is drawn anew.</summary>
    [Benchmark]
    public async Task<int> BoardAfterAFact()
    {
        await TellAsync();
        return await AskAsync(_owner, "/board");
    }

    /// <summary>The telling alone.</summary>
    [Benchmark]
    public async Task TellAsync()
    {
        await using var scope = _portal.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<AcademyDb>();
        await db.Salons.ExecuteUpdateAsync(set => set.SetProperty(row => row.Version, row => row.Version + 1));
    }

    /// <summary>Who may do this dog, alone, today.</summary>
    [Benchmark]
    public Task<int> DogCheck() =>
        AskAsync(
            _owner,
            $"/dog-check?Form.Dog={BigSalon.Dog.Value}&Form.IsAsked=true&Form.Techniques=bath&Form.Techniques=nails"
        );

    private static async Task<int> AskAsync(HttpClient browser, string path)
    {
        using var answer = await browser.GetAsync(path);
        if (answer.StatusCode != HttpStatusCode.OK)
            throw new InvalidOperationException($"{path} answered {answer.StatusCode}.");
        return (await answer.Content.ReadAsByteArrayAsync()).Length;
    }
}
