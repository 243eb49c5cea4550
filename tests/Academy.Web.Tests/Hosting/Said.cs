using System.Threading.Channels;
using Microsoft.Extensions.Logging;

namespace Academy.Web.Tests.Hosting;

/// <summary>A log that can be waited for.</summary>
internal sealed class Said<T> : ILogger<T>
{
    private readonly Channel<(LogLevel, string)> _lines = Channel.CreateUnbounded<(LogLevel, string)>();

    public async Task<(LogLevel, string)> NextAsync() => await _lines.Reader.ReadAsync(TestContext.Current.CancellationToken);

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(
        LogLevel logLevel,
        EventId eventId,
        TState state,
        Exception? exception,
        Func<TState, Exception?, string> formatter
    ) => Assert.True(_lines.Writer.TryWrite((logLevel, formatter(state, exception))));
}
