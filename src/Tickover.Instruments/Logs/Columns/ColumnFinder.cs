using System.Globalization;
using Tickover.Instruments.Logs.Text;

namespace Tickover.Instruments.Logs.Columns;

/// <summary>Finds what the columns hold: what was told first, then what is remembered, then headings, then figures.</summary>
internal sealed class ColumnFinder(TableShape shape, LogReadingSettings settings)
{
    private const int CellsShown = 3;
    private const int LongestCell = 24;
    private static readonly LogQuantity[] Several = [LogQuantity.Lambda, LogQuantity.ManifoldPressure, LogQuantity.EngineSpeed];

    private readonly HeadingText[] _headings = [.. shape.Headings.Select((h, i) => HeadingText.Of(h, shape.Units[i]))];
    private readonly SampleColumn[] _samples = [.. Enumerable.Range(0, shape.Headings.Count).Select(i => SampleColumn.Of(shape, i))];

    /// <summary>Columns told that the file does not have.</summary>
    public IReadOnlyList<string> Unknown() =>
        [.. settings.Columns.Where(c => IndexOf(c) < 0).Select(c => c.Column)];

    /// <summary>All columns in order.</summary>
    /// <returns>The choices.</returns>
    public ColumnChoice[] Find()
    {
        var layout = settings.Layouts.FirstOrDefault(l => string.Equals(l.Key, LogLayout.KeyOf(shape.Headings), StringComparison.Ordinal));
        var remembered = layout?.Choices().ToArray() ?? [];
        var choices = new ColumnChoice[shape.Headings.Count];
        for (var i = 0; i < choices.Length; i++)
        {
            var known = settings.Columns.LastOrDefault(c => IndexOf(c) == i) ?? remembered.FirstOrDefault(c => (c.Index < 0 || c.Index == i) && string.Equals(c.Column, shape.Headings[i], StringComparison.Ordinal));
            choices[i] = known is null ? ByHeading(i) : known with { Column = shape.Headings[i], Index = i, Sureness = HowSure.Told, Why = known.Why.Length > 0 ? known.Why : "told" };
        }

        if (shape.HeadingRow < 0 || !choices.Any(c => c.Quantity is LogQuantity.EngineSpeed or LogQuantity.Lambda))
        {
            FigureGuess.Fill(choices, _samples);
        }

        Settle(choices);
        return [.. choices.Select(WithCells)];
    }

    private ColumnChoice WithCells(ColumnChoice choice) => choice with
    {
        Seen = string.Join("; ", shape.Sample.Where(r => choice.Index < r.Length).Select(r => Shown(r[choice.Index])).Where(c => c.Length > 0).Distinct(StringComparer.Ordinal).Take(CellsShown)),
        Least = double.IsFinite(_samples[choice.Index].Least) ? _samples[choice.Index].Least : null,
        Most = double.IsFinite(_samples[choice.Index].Most) ? _samples[choice.Index].Most : null,
    };

    private static string Shown(string cell)
    {
        var bare = CellNumber.Bare(cell).ToString();
        return bare.Length > LongestCell ? string.Concat(bare.AsSpan(0, LongestCell), "…") : bare;
    }

    private int IndexOf(ColumnChoice told)
    {
        var found = shape.Headings.ToList().FindIndex(h => string.Equals(h.Trim(), told.Column.Trim(), StringComparison.OrdinalIgnoreCase));
        return found >= 0 || !told.Column.StartsWith('#') || !int.TryParse(told.Column.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > shape.Headings.Count
            ? found
            : number - 1;
    }

    private ColumnChoice ByHeading(int i)
    {
        var heading = _headings[i];
        var quantity = shape.HeadingRow < 0 ? null : HeadingWords.Find(heading);
        var blank = Choice(i, LogQuantity.Ignored, "nothing in it is needed here");
        if (quantity is null or LogQuantity.Ignored)
        {
            return blank;
        }

        if (_samples[i].Figures == 0 && !(quantity is LogQuantity.Time && _samples[i].Clocks > 0))
        {
            return blank with { Why = $"called {Words(quantity.Value)}, but there are no figures in its first rows" };
        }

        var unit = heading.Unit.Length > 0 ? LogUnits.Find(quantity.Value, heading.Unit) : null;
        return Choice(i, quantity.Value, $"heading says {Words(quantity.Value)}") with
        {
            Unit = quantity is LogQuantity.ManifoldPressure ? null : unit,
            Bank = quantity is LogQuantity.Lambda ? HeadingWords.Bank(heading) : null,
            Sureness = unit is null ? HowSure.Likely : HowSure.Sure,
        };
    }

    private ColumnChoice Choice(int i, LogQuantity quantity, string why) =>
        new() { Column = shape.Headings[i], Index = i, Quantity = quantity, Why = why, Sureness = HowSure.Sure };

    /// <summary>Where several columns claim the same, the first stands and the others say why they do not.</summary>
    private void Settle(ColumnChoice[] choices)
    {
        TimeOf(choices);
        foreach (var quantity in Enum.GetValues<LogQuantity>().Except([LogQuantity.Ignored, LogQuantity.Time, .. Several]))
        {
            var claims = choices.Where(c => c.Quantity == quantity).OrderBy(c => c.Sureness).ToArray();
            Drop(choices, claims.Skip(1), claims.FirstOrDefault());
        }

        Lambdas(choices);
    }

    private void TimeOf(ColumnChoice[] choices)
    {
        var claims = choices.Where(c => c.Quantity == LogQuantity.Time)
            .OrderByDescending(c => c.Sureness is HowSure.Told)
            .ThenByDescending(c => _samples[c.Index].Rises)
            .ThenByDescending(c => _samples[c.Index].Distinct)
            .ToArray();
        Drop(choices, claims.Skip(1), claims.FirstOrDefault());
    }

    private void Lambdas(ColumnChoice[] choices)
    {
        var claims = choices.Where(c => c.Quantity == LogQuantity.Lambda).ToArray();
        foreach (var same in claims.GroupBy(c => c.Bank).Where(g => g.Count() > 1))
        {
            // λ before AFR: it needs no assumption.
            var first = same.OrderBy(c => c.Sureness is HowSure.Told ? 0 : 1).ThenBy(c => _samples[c.Index].Median > 3 ? 1 : 0).First();
            Drop(choices, same.Where(c => c != first), first);
        }

        var left = choices.Where(c => c.Quantity == LogQuantity.Lambda).ToArray();
        if (left.Length == 1 && left[0].Sureness is not HowSure.Told && left[0].Bank is 1 && !_headings[left[0].Index].HasAny("left", "l", "lh"))
        {
            choices[left[0].Index] = left[0] with { Bank = null, Why = left[0].Why + "; the only one, so its number is taken for no bank" };
        }
        else if (left.Length > 1 && left.FirstOrDefault(c => c.Bank is null) is { Sureness: not HowSure.Told } whole)
        {
            Drop(choices, [whole], left.First(c => c.Bank is not null));
        }
    }

    private static void Drop(ColumnChoice[] choices, IEnumerable<ColumnChoice> losers, ColumnChoice? winner)
    {
        foreach (var loser in losers.Where(l => l.Sureness is not HowSure.Told || l.Quantity is LogQuantity.Time).ToArray())
        {
            choices[loser.Index] = loser with { Quantity = LogQuantity.Ignored, Unit = null, Bank = null, Why = $"says the same as {winner!.Column}, which is used" };
        }
    }

    /// <summary>A quantity in the trade's words.</summary>
    internal static string Words(LogQuantity quantity) => quantity switch
    {
        LogQuantity.EngineSpeed => "engine speed",
        LogQuantity.ManifoldPressure => "manifold pressure",
        LogQuantity.Lambda => "mixture",
        LogQuantity.CoolantTemperature => "coolant temperature",
        LogQuantity.OilTemperature => "oil temperature",
        LogQuantity.AirTemperature => "air temperature",
        LogQuantity.FuelPressure => "fuel pressure",
        LogQuantity.RoadSpeed => "road speed",
        LogQuantity.Time => "time",
        LogQuantity.Throttle => "throttle",
        _ => "nothing used",
    };
}
