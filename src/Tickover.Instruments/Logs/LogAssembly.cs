using System.Globalization;
using Tickover.Instruments.Logs.Columns;
using Tickover.Instruments.Logs.Mending;
using Tickover.Instruments.Logs.Text;
using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs;

/// <summary>Makes clean channels of the columns read: units settled, clock mended, strays and codes out.</summary>
internal sealed class LogAssembly(TableShape shape, LogReadingSettings settings, RawTable table, IReadOnlyList<int> used, bool clock)
{
    private const int FewestRows = 20;

    private readonly List<LogCount> _repairs = [];
    private readonly List<LogCount> _dropped = [];
    private readonly List<string> _doubts = [];
    private ColumnChoice[] _columns = [];
    private bool[] _kept = [];
    private int _keptCount;
    private IReadOnlyList<int> _restarts = [];

    /// <summary>Finishes a reading.</summary>
    /// <param name="seen">What was seen so far.</param>
    /// <returns>The reading with its log, or why there is none.</returns>
    public LogReading Finish(LogReading seen)
    {
        _columns = [.. seen.Columns];
        if (table.Count < FewestRows)
        {
            return seen with { Refusal = Refusals.NoRows() };
        }

        if (OtherEngine() is { } two)
        {
            return seen with { Refusal = two };
        }

        var seconds = Clock();
        Settle();
        var (whole, unusable) = Channels(seconds);
        var (log, parts, refusal) = whole is null ? (null, [], unusable) : InParts(whole);
        return seen with
        {
            Log = log,
            Refusal = refusal,
            Parts = parts,
            Columns = _columns,
            RowsKept = seen.RowsKept - _dropped.Sum(d => d.Rows) * table.RowsPerSample,
            Dropped = [.. seen.Dropped, .. _dropped],
            Repairs = [.. seen.Repairs, .. _repairs.Where(r => r.Rows > 0)],
        };
    }

    private (RoadLog? Log, IReadOnlyList<LogPart> Parts, LogRefusal? Refusal) InParts(RoadLog log)
    {
        var (parts, doubt) = new EngineSeams(log, _restarts).Look();
        return settings.Part is not { } part ? (doubt is null ? log : log with { Doubts = [.. log.Doubts, doubt] }, parts, null)
            : part >= 1 && part <= parts.Count ? (LogParts.Take(log, parts[part - 1]), parts, null)
            : (null, parts, Refusals.NoSuchPart(part, parts));
    }

    private LogRefusal? OtherEngine()
    {
        var speeds = _columns.Where(c => c.Quantity is LogQuantity.EngineSpeed).ToArray();
        foreach (var other in speeds.Skip(1))
        {
            var first = Raw(speeds[0]);
            if (EngineSpeeds.AreTwo(first, Raw(other)))
            {
                return Refusals.TwoEngines(speeds[0].Column, other.Column);
            }

            // The one that moves is the engine's.
            var better = Spread.Of(first).Still ? other : speeds[0];
            var worse = better == other ? speeds[0] : other;
            _columns[worse.Index] = worse with { Quantity = LogQuantity.Ignored, Unit = null, Why = $"says the same as {better.Column}, which is used" };
            speeds[0] = better;
        }

        return null;
    }

    private double[] Clock()
    {
        var scale = 1 / (settings.RowsPerSecond ?? 1);
        if (Array.Find(_columns, c => c.Quantity is LogQuantity.Time) is { } time)
        {
            time = clock ? time with { Unit = LogUnits.Find(LogQuantity.Time, "clock"), Why = time.Why + "; written out" } : TimeUnit.Find(table.Times, time);
            var (first, last) = clock || table.Count == 0 ? (time.Least, time.Most) : (table.Times.ToArray().Min(), table.Times.ToArray().Max());
            _columns[time.Index] = time with { Least = first, Most = last };
            scale = time.Unit!.Scale;
        }

        foreach (ref var at in table.Times)
        {
            at *= scale;
        }

        var mender = new TimeMender();
        _kept = new bool[table.Count];
        var mended = mender.Mend(table.Times, _kept);
        _restarts = mender.Restarts;
        _repairs.AddRange(mender.Repairs);
        _keptCount = table.Count - (int)mender.AlreadySeen;
        if (mender.AlreadySeen > 0)
        {
            _dropped.Add(new LogCount("time already seen: a block written twice", mender.AlreadySeen));
        }

        return Kept(mended);
    }

    private void Settle()
    {
        var (judge, pressure) = (new UnitJudge(settings), new PressureJudge(settings));
        var throttle = Of(LogQuantity.Throttle).FirstOrDefault();
        for (var i = 0; i < _columns.Length; i++)
        {
            var column = _columns[i];
            if (column.Quantity is LogQuantity.Ignored or LogQuantity.Time)
            {
                continue;
            }

            var (least, most) = Ends(Raw(column));
            column = column with { Least = least, Most = most };
            _columns[i] = column.Quantity is LogQuantity.ManifoldPressure
                ? pressure.Settle(column, Raw(column), throttle is null ? [] : Raw(throttle), HeadingText.Of(column.Column, shape.Units[column.Index]))
                : judge.Settle(column, Raw(column));
            var optional = column.Quantity is not (LogQuantity.EngineSpeed or LogQuantity.Lambda);
            if (optional && (_columns[i].Unit is null || Spread.Of(Raw(column)) is { Count: 0 } || (column.Quantity is LogQuantity.Throttle && Spread.Of(Raw(column)).Still)))
            {
                Leave(i);
            }
        }
    }

    private static (double? Least, double? Most) Ends(ReadOnlySpan<float> figures)
    {
        var (least, most) = (float.PositiveInfinity, float.NegativeInfinity);
        foreach (var figure in figures)
        {
            if (float.IsFinite(figure))
            {
                (least, most) = (Math.Min(least, figure), Math.Max(most, figure));
            }
        }

        // By way of the text: 4.1 as the file has it, not 4.099999.
        return least > most ? (null, null) : (double.Parse(least.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), double.Parse(most.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
    }

    private void Leave(int i)
    {
        var column = _columns[i];
        var why = column.Unit is null ? column.Why : "the figure never moves";
        _doubts.Add($"'{column.Column}' is not used as {ColumnFinder.Words(column.Quantity)}: {why}.");
        _columns[i] = column with { Quantity = LogQuantity.Ignored, Unit = null, Why = why };
    }

    private (RoadLog? Log, LogRefusal? Refusal) Channels(double[] seconds)
    {
        var speed = Of(LogQuantity.EngineSpeed).First();
        if (speed.Unit is null || Spread.Of(Raw(speed)).Still)
        {
            return (null, speed.Unit is null ? Refusals.Implausible(speed) : Refusals.Stands("engine speed", speed.Column));
        }

        if (!Of(LogQuantity.Throttle).Any() && !Of(LogQuantity.ManifoldPressure).Any())
        {
            return (null, new(LogRefusedBecause.NothingMoves, $"Neither throttle nor manifold pressure can be used. {string.Join(' ', _doubts)}", "Log one of them, or say which column it is and in which unit."));
        }

        var (lambdas, refusal) = Lambdas(seconds);
        if (lambdas.Count == 0)
        {
            return (null, refusal);
        }

        var road = Single(LogQuantity.RoadSpeed);
        var throttle = Of(LogQuantity.Throttle).FirstOrDefault();
        return (new RoadLog
        {
            Name = settings.Name,
            Seconds = seconds,
            SpeedRpm = Speed(speed, throttle, road),
            Throttle = throttle is null ? null : Channel(throttle),
            ThrottleScale = throttle?.Unit?.Name is "°" ? ThrottleScale.Degrees : ThrottleScale.Relative,
            ManifoldPascals = Mean([.. Of(LogQuantity.ManifoldPressure)]),
            Lambdas = lambdas,
            CoolantKelvins = Single(LogQuantity.CoolantTemperature),
            OilKelvins = Single(LogQuantity.OilTemperature),
            AirKelvins = Single(LogQuantity.AirTemperature),
            FuelPressurePascals = Single(LogQuantity.FuelPressure),
            RoadMetresPerSecond = road,
            Doubts = _doubts,
        }, null);
    }

    private (List<LambdaChannel> Channels, LogRefusal? Refusal) Lambdas(double[] seconds)
    {
        var (channels, refusal) = (new List<LambdaChannel>(), (LogRefusal?)null);
        foreach (var column in Of(LogQuantity.Lambda))
        {
            if (column.Unit is null || Spread.Of(Raw(column)).Still)
            {
                refusal ??= column.Unit is null ? Refusals.Implausible(column) : Refusals.Stands("mixture", column.Column);
                _doubts.Add($"'{column.Column}' is not used: {(column.Unit is null ? column.Why : "the figure never moves")}.");
                continue;
            }

            var (channel, codes, warm) = LambdaMender.Mend(Channel(column), seconds, column.Bank);
            _repairs.Add(new LogCount($"{column.Column}: figures no engine gives (taken for codes and left out)", codes));
            _repairs.Add(new LogCount($"{column.Column}: sensor warming up (left out)", warm));
            channels.Add(channel);
        }

        return (channels, refusal);
    }

    private float[] Speed(ColumnChoice column, ColumnChoice? throttle, float[]? road)
    {
        var speed = Channel(column);
        _repairs.Add(new LogCount("engine speed: strays", SpeedMender.TakeOutStrays(speed)));
        if (column.Sureness is HowSure.Told && column.Unit is not null)
        {
            return speed;
        }

        var (factor, why) = SpeedMender.Factor(speed, throttle is null ? [] : Channel(throttle), road ?? [], settings.PeakPowerRpm);
        if (factor is not 1)
        {
            _columns[column.Index] = column with { Unit = LogUnits.Find(LogQuantity.EngineSpeed, factor > 1 ? "rpm x2" : "rpm /2"), Sureness = HowSure.Guess, Why = $"{column.Why}; {why}" };
            _doubts.Add(string.Create(CultureInfo.InvariantCulture, $"Engine speed was multiplied by {factor:0.#}: {why}."));
            foreach (ref var rpm in speed.AsSpan())
            {
                rpm *= (float)factor;
            }
        }

        return speed;
    }

    private IEnumerable<ColumnChoice> Of(LogQuantity quantity) => _columns.Where(c => c.Quantity == quantity);

    private Span<float> Raw(ColumnChoice column) => table.Columns[used.ToList().IndexOf(column.Index)].Figures;

    private float[]? Single(LogQuantity quantity) => Of(quantity).FirstOrDefault() is { } column ? Channel(column) : null;

    private float[]? Mean(ColumnChoice[] columns)
    {
        if (columns.Length == 0)
        {
            return null;
        }

        var channels = columns.Select(Channel).ToArray();
        return [.. Enumerable.Range(0, channels[0].Length).Select(i => channels.Select(c => c[i]).Where(float.IsFinite).DefaultIfEmpty(float.NaN).Average())];
    }

    private float[] Channel(ColumnChoice column)
    {
        var raw = Raw(column);
        var (channel, to) = (new float[_keptCount], 0);
        for (var i = 0; i < raw.Length; i++)
        {
            if (_kept[i])
            {
                channel[to++] = (float)column.Unit!.ToSi(raw[i], settings.BarometerPascals);
            }
        }

        return channel;
    }

    private double[] Kept(double[] all)
    {
        var (kept, to) = (new double[_keptCount], 0);
        for (var i = 0; i < all.Length; i++)
        {
            if (_kept[i])
            {
                kept[to++] = all[i];
            }
        }

        return kept;
    }
}
