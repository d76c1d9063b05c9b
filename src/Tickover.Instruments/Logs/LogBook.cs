using System.Globalization;
using Tickover.Instruments.Logs.Columns;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs;

/// <summary>Reads a log down to its points: the reader, then the making of points, and the account of both in sentences.</summary>
public sealed class LogBook : ILogBook
{
    private const double RpmPerRadian = 60 / (2 * Math.PI);
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <inheritdoc/>
    public LogTold Read(Stream log, string name, Car car, LogHints hints, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(hints);
        var told = new List<ColumnChoice>();
        foreach (var text in hints.Columns)
        {
            var (column, complaint) = ColumnWords.Read(text);
            if (column is null)
            {
                return new LogTold([], [], [complaint], new LogSheet());
            }

            told.Add(column);
        }

        var settings = Settings(name, car) with
        {
            Columns = told,
            Layouts = [.. hints.Layouts.Select(LogLayout.Read).OfType<LogLayout>()],
            RowsPerSecond = hints.RowsPerSecond,
            Part = hints.Part,
        };
        return Of(LogReader.Read(log, settings, null, cancellation), car, hints);
    }

    /// <inheritdoc/>
    public IReadOnlyList<LogMeaning> Meanings() => ColumnWords.Meanings();

    /// <summary>What is known beforehand of a log of a car.</summary>
    /// <param name="name">What the log is called.</param>
    /// <param name="car">The car as it was.</param>
    /// <returns>The settings.</returns>
    public static LogReadingSettings Settings(string name, Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return new LogReadingSettings
        {
            Name = name,
            PeakPowerRpm = car.Engine.Si("engine.peakPowerSpeed") * RpmPerRadian,
            BarometerPascals = car.Ambient.Si("ambient.pressure"),
        };
    }

    /// <summary>The points of a log that was read, with the account.</summary>
    /// <param name="reading">What came of reading it.</param>
    /// <param name="car">The car as it was.</param>
    /// <param name="hints">What a person said of it.</param>
    /// <returns>Points and sentences, or refusals.</returns>
    private static LogTold Of(LogReading reading, Car car, LogHints hints)
    {
        var sheet = LogSheets.Of(reading, hints);
        if (reading.Log is not { } log)
        {
            return new LogTold([], [], [reading.Refusal?.ToString() ?? "The log cannot be used."], sheet);
        }

        var account = LogPoints.Of(log, car);
        var told = Told(reading, account);
        sheet = sheet with { Trace = account.Trace, Pump = account.Pump };
        return account.Points.Count > 0
            ? new LogTold(InOneBank(account.Points, car), told, [], sheet)
            : new LogTold([], told, [account.NoPoints!, string.Create(C, $"What was there: {string.Join(", ", account.Dropped.Select(a => string.Create(C, $"{a.Seconds:0.#} s {a.Why}")))}."), .. reading.Log.Doubts], sheet);
    }

    // On an engine of one bank, left and right are two probes in one exhaust, or its two halves.
    private static IReadOnlyList<MixturePoint> InOneBank(IReadOnlyList<MixturePoint> points, Car car) =>
        car.Banks.Max() > 1 ? points : [.. points.Select(p => p with { Bank = null })];

    private static List<string> Told(LogReading reading, LogAccount account)
    {
        var used = reading.Columns.Where(c => c.Quantity != LogQuantity.Ignored).Select(c =>
            $"{c.Column} as {ColumnFinder.Words(c.Quantity)}{(c.Unit is { } unit ? $" in {unit}" : "")}{(c.Bank is { } bank ? string.Create(C, $", bank {bank}") : "")}");
        var told = new List<string>
        {
            $"{reading.Form}. Taken: {string.Join("; ", used)}.",
            string.Create(C, $"{reading.RowsKept:N0} of {reading.Rows:N0} rows used{Counts(reading.Dropped, "left out")}{Counts(reading.Repairs, "mended")}."),
            string.Create(C, $"{account.Points.Count} points from {account.Stretches.Count(s => s.Regime is not Regime.TipIn)} steady stretches; left aside: {string.Join(", ", account.Dropped.Select(a => string.Create(C, $"{a.Seconds:0.#} s {a.Why}")))}."),
            account.Delay.Found
                ? string.Create(C, $"λ lags by {account.Delay.SlowSeconds:0.00} ±{account.Delay.SlowSigma:0.00} s at little flow and {account.Delay.FastSeconds:0.00} ±{account.Delay.FastSigma:0.00} s at much; found in the log.")
                : string.Create(C, $"The lag of λ does not show; {account.Delay.FastSeconds:0.00} to {account.Delay.SlowSeconds:0.00} s were taken."),
        };
        if (account is { ClosedMark: { } closed, WideMark: { } wide })
        {
            told.Add(string.Create(C, $"Throttle: {closed:0.##} shut, {wide:0.##} wide open, found in the log."));
        }

        told.AddRange(account.Doubts);
        return told;
    }

    private static string Counts(IReadOnlyList<LogCount> counts, string what) =>
        counts.Count == 0 ? "" : $"; {what}: {string.Join(", ", counts.Select(c => string.Create(C, $"{c.Rows} {c.What}")))}";
}
