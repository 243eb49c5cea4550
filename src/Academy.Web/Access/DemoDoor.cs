using System.Net;
using Academy.Web.Shell;

namespace Academy.Web.Access;

/// <summary>
/// In the demo anybody at this very machine may step in as anybody of the invented salon. Not from elsewhere, and not through
/// something in front of the portal: then this machine's address says nothing about who asks.
/// </summary>
public sealed class DemoDoor(Site site, IHttpContextAccessor here)
{
    /// <summary>What a signature takes for a password in the demo, where nobody has one.</summary>
    public const string Word = "demo";

    private static readonly string[] MarksOfAProxy = ["X-Forwarded-For", "X-Forwarded-Host", "X-Real-IP", "Forwarded", "Via"];

    public bool IsOpen => site.Demo && here.HttpContext is { } http && IsAtThisMachine(http);

    public Entrance Confirm(string? password) => password == Word ? new Entrance.Open(Guid.Empty) : new Entrance.NotFitting();

    private static bool IsAtThisMachine(HttpContext http) =>
        http.Connection.RemoteIpAddress is { } address
        && IPAddress.IsLoopback(address)
        && !MarksOfAProxy.Any(http.Request.Headers.ContainsKey);
}
