using System.Globalization;
using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>Chooses jets for the cars in the shop, one after the other, beside the pages.</summary>
/// <remarks>The same question is answered once: what it rests on is its name.</remarks>
/// <param name="options">The clock.</param>
public sealed class JetDesk(WebAppOptions options) : IDisposable
{
    private const int Kept = 12;
    private const int NextShown = 3;
    private readonly Lock _lock = new();
    private readonly SemaphoreSlim _one = new(1);
    private readonly LinkedList<(string Question, JetWork Work)> _works = [];

    /// <summary>The work on a visit's question where it was asked already.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="stock">The shelf.</param>
    /// <returns>The work, or null.</returns>
    public JetWork? Find(VisitRecord record, IReadOnlyList<StockJet> stock)
    {
        var question = Question(record, stock);
        lock (_lock)
        {
            return _works.FirstOrDefault(w => string.Equals(w.Question, question, StringComparison.Ordinal)).Work;
        }
    }

    /// <summary>The last choice made for a visit, whatever was asked since; null where there is none.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>What came of it.</returns>
    public JetOutcome? Last(Id<Visit> visit)
    {
        lock (_lock)
        {
            return _works.Select(w => w.Work).FirstOrDefault(w => w.Visit == visit && w.Outcome?.Advice is not null)?.Outcome;
        }
    }

    /// <summary>Begins the work on a visit's question unless it is under way or done.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="stock">The shelf.</param>
    /// <returns>The work.</returns>
    public JetWork Begin(VisitRecord record, IReadOnlyList<StockJet> stock)
    {
        var question = Question(record, stock);
        lock (_lock)
        {
            var known = _works.FirstOrDefault(w => string.Equals(w.Question, question, StringComparison.Ordinal)).Work;
            if (known is not null && known.Outcome?.Stopped != true)
            {
                return known;
            }

            var work = new JetWork(record.Visit.Id, options.Clock.GetUtcNow());
            _works.AddFirst((question, work));
            while (_works.Count > Kept)
            {
                _works.Last!.Value.Work.Stop();
                _works.RemoveLast();
            }

            _ = Task.Run(() => DoAsync(work, record, stock));
            return work;
        }
    }

    /// <summary>Stops the work on a visit's question.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="stock">The shelf.</param>
    public void Stop(VisitRecord record, IReadOnlyList<StockJet> stock) => Find(record, stock)?.Stop();

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            foreach (var (_, work) in _works)
            {
                work.Stop();
            }
        }

        _one.Dispose();
    }

    private async Task DoAsync(JetWork work, VisitRecord record, IReadOnlyList<StockJet> stock)
    {
        try
        {
            await _one.WaitAsync(work.Cancellation);
            try
            {
                work.End(Choose(work, record, stock));
            }
            finally
            {
                _one.Release();
            }
        }
        catch (Exception fault) when (fault is OperationCanceledException or ObjectDisposedException)
        {
            work.End(new JetOutcome { Stopped = true });
        }
    }

    private static JetOutcome Choose(JetWork work, VisitRecord record, IReadOnlyList<StockJet> stock)
    {
        if (CarOf(record) is not { } car)
        {
            return new JetOutcome { Refusals = ["The car has no description that can be read. Write one first: jets, chokes, bores."] };
        }

        var progress = new Spoken(work);
        var outcome = Runs(record) is { Count: > 0 } runs ? Calibrator.Fit(runs, progress: progress, cancellation: work.Cancellation) : new CalibrationOutcome(null, []);
        IForecast forecast = outcome.Fit is { } fit ? fit : new PriorForecast();
        var shelf = stock.Any(s => !s.Removed && s.Count > 0) ? new JetShelf(stock.Where(s => !s.Removed).Select(s => KeyValuePair.Create((s.Part, s.Size), s.Count))) : null;
        var advice = JetChooser.Choose(car, forecast, new JetChoiceSettings { Shelf = shelf }, progress, work.Cancellation);
        work.Say("Weighing what to read next");
        var proposal = advice.FromShelf ?? advice.LeastEffort;
        return new JetOutcome
        {
            Fit = outcome.Fit,
            Refusals = outcome.Refusals,
            Advice = advice,
            Next = NextReadings.Of(car, proposal.Car, forecast, JetTargets.Usual, NextShown, work.Cancellation),
            Now = ForetoldMap.Of(advice.Now.Map, work.Cancellation),
            Then = ForetoldMap.Of(proposal.Map, work.Cancellation),
        };
    }

    /// <summary>The car as it is described now; null where there is no description that can be read.</summary>
    internal static Car? CarOf(VisitRecord record) => record.Descriptions is [.., var latest] ? CarDocument.Read(latest.Document).Car : null;

    private static List<CalibrationRun> Runs(VisitRecord record) =>
    [
        .. record.Runs.Where(r => !r.LeftOut)
            .Select(r => (Run: r, CarDocument.Read(r.Document).Car))
            .Where(r => r.Car is not null)
            .Select(r => new CalibrationRun(r.Run.Name, r.Car!, r.Run.Points)),
    ];

    private static string Question(VisitRecord record, IReadOnlyList<StockJet> stock) => string.Join(
        '\n',
        record.Runs.Where(r => !r.LeftOut).Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Id} {r.Version}"))
            .Concat(stock.Where(s => !s.Removed).Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Part} {s.Size} {s.Count}")).Order(StringComparer.Ordinal))
            .Append(record.Descriptions is [.., var latest] ? latest.Document : string.Empty));

    private sealed class Spoken(JetWork work) : IProgress<string>
    {
        public void Report(string value) => work.Say(value);
    }
}
