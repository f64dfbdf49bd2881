using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace ShopFit.Web.Support;

/// <summary>Keeps every line that the site logs, with what was logged beside the text.</summary>
public sealed class RecordedLogs : ILoggerProvider
{
    private readonly ConcurrentQueue<string> _lines = [];

    public IReadOnlyCollection<string> Lines => _lines;

    public ILogger CreateLogger(string categoryName) => new Recorder(categoryName, _lines);

    public void Dispose()
    {
    }

    private sealed class Recorder(string category, ConcurrentQueue<string> lines) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            lines.Enqueue($"{logLevel} {category}: {formatter(state, exception)} {exception}");
    }
}
