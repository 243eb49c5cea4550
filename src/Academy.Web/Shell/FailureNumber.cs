using System.Diagnostics;
using Microsoft.AspNetCore.Diagnostics;

namespace Academy.Web.Shell;

/// <summary>The number that a person can quote when something of ours broke; the log has the rest beside it.</summary>
public sealed class FailureNumber(ILogger<FailureNumber> log) : IExceptionHandler
{
    public ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        log.LogError(
            exception,
            "Failure {Number} at {Method} {Path}",
            Of(httpContext),
            httpContext.Request.Method,
            httpContext.Features.Get<IExceptionHandlerPathFeature>()?.Path
        );
        return ValueTask.FromResult(false);
    }

    /// <summary>Eight characters in two groups, short enough to say on the phone.</summary>
    public static string Of(HttpContext http)
    {
        var trace = Activity.Current?.TraceId.ToHexString() ?? http.TraceIdentifier.Replace(":", "", StringComparison.Ordinal);
        var end = trace[^Math.Min(8, trace.Length)..].ToUpperInvariant();
        return end.Length == 8 ? $"{end[..4]}-{end[4..]}" : end;
    }
}
