using System.Security.Cryptography;
using System.Text;
using Academy.Competence;
using Academy.Storage;
using Microsoft.AspNetCore.Authorization;

namespace Academy.Web.Access;

/// <summary>
/// Before there is a salon: a key stands in the console of whoever started the portal, and only with it the salon is opened, so
/// that no stranger claims it. The key is never kept, only its hash, and only until the portal stops or the salon is there.
/// </summary>
public sealed class FirstRun(IServiceScopeFactory scopes, TextWriter console) : IDisposable
{
    // No letter or digit that is taken for another when read out.
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private const int Groups = 6;
    private const int LettersInAGroup = 5;

    private SalonId? _salon;
    private byte[]? _keyHash;

    /// <summary>One opens a salon at a time, and sees whether another did.</summary>
    public SemaphoreSlim Turn { get; } = new(1, 1);

    /// <summary>The salon of this installation; null until it is opened.</summary>
    public async ValueTask<SalonId?> SalonAsync(CancellationToken stop)
    {
        if (_salon is not null)
            return _salon;
        await using var scope = scopes.CreateAsyncScope();
        return _salon = await scope.ServiceProvider.GetRequiredService<RecordBook>().OnlySalonAsync(stop);
    }

    /// <summary>Writes a new key into the console if there is no salon yet.</summary>
    public async Task AnnounceAsync(CancellationToken stop)
    {
        if (await SalonAsync(stop) is not null)
            return;
        var key = string.Join(
            '-',
            Enumerable.Range(0, Groups).Select(_ => RandomNumberGenerator.GetString(Letters, LettersInAGroup))
        );
        _keyHash = HashOf(key);
        await console.WriteLineAsync(
            $"""

            No salon is set up here yet. Open /set-up in a browser and write this key:

                {key}

            It holds until the salon is set up or this process stops. Give it to nobody else.

            """
        );
    }

    /// <summary>Whether this is the key; spaces, dashes and small letters are forgiven.</summary>
    public bool Fits(string key) => _keyHash is { } hash && CryptographicOperations.FixedTimeEquals(hash, HashOf(key));

    /// <summary>The salon is there: the key is void.</summary>
    public void Opened(SalonId salon) => (_salon, _keyHash) = (salon, null);

    public void Dispose() => Turn.Dispose();

    private static byte[] HashOf(string key) =>
        SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(key.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit))));
}

/// <summary>A page that opens for anybody, but says nothing while there is no salon.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class AsksForSalonAttribute : Attribute;

/// <summary>While there is no salon every page leads to the one on which it is opened; files and the heat card stand.</summary>
internal sealed class BeforeTheFirstDay(RequestDelegate next, FirstRun first)
{
    public async Task InvokeAsync(HttpContext http)
    {
        if (Asks(http.GetEndpoint()) && await first.SalonAsync(http.RequestAborted) is null)
            http.Response.Redirect(http.Request.PathBase + Features.Shared.Paths.SetUp);
        else
            await next(http);
    }

    private static bool Asks(Endpoint? page) =>
        page is not null
        && (
            page.Metadata.GetMetadata<IAllowAnonymous>() is null || page.Metadata.GetMetadata<AsksForSalonAttribute>() is not null
        );
}
