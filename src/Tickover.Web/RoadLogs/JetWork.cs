using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>A choice of jets under way or done.</summary>
public sealed class JetWork : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private volatile string _doing = "Waiting for a free hand";

    internal JetWork(Id<Visit> visit, DateTimeOffset began) => (Visit, Began) = (visit, began);

    /// <summary>The visit it is for.</summary>
    public Id<Visit> Visit { get; }

    /// <summary>When it began.</summary>
    public DateTimeOffset Began { get; }

    /// <summary>What is being done.</summary>
    public string Doing => _doing;

    /// <summary>What came of it; null while it is under way.</summary>
    public JetOutcome? Outcome { get; private set; }

    internal CancellationToken Cancellation => _stop.Token;

    /// <inheritdoc/>
    public void Dispose() => _stop.Dispose();

    internal void Say(string doing) => _doing = doing;

    internal void End(JetOutcome outcome) => Outcome = outcome;

    internal void Stop() => _stop.Cancel();
}
