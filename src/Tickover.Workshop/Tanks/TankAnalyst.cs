using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks.Parts;
using Tickover.Workshop.Tanks.Working;

namespace Tickover.Workshop.Tanks;

/// <summary>Works out tanks, sender and gauge.</summary>
public static class TankAnalyst
{
    private static readonly double[] Steps = [1, 2, 5, 10, 20, 50];
    private const int MostLines = 18;

    /// <summary>Works it all out.</summary>
    /// <param name="set">The tanks.</param>
    /// <returns>The analysis.</returns>
    public static TankAnalysis Of(TankSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var fuel = set.Tanks.Count > 0 ? new TankFuel(set) : null;
        var level = new TankStance("level", Tilt.Level, false);
        var unusable = fuel?.Unusable(level) is { } v ? TankUnits.Litres(v) : (double?)null;
        var gauge = new GaugeFinder(set, fuel, unusable);
        var analysis = new TankAnalysis
        {
            Set = set,
            Table = fuel is null ? [] : Table(fuel, gauge),
            UnusableLitres = unusable,
            Stances = fuel is null ? [] : [.. set.Stances.Select(s => Stance(fuel, gauge, s))],
            Fill = set.Fill is { } fill ? Fit(set, fill) : null,
            Sender = gauge.Verdict,
            IsNeedleRead = gauge.IsNeedleRead,
        };
        return analysis with { TankAdvice = TankWords.Of(analysis), SenderAdvice = SenderWords.Of(analysis, gauge) };
    }

    /// <summary>One filling, the car level.</summary>
    /// <param name="set">The tanks; one or more.</param>
    /// <param name="litres">Fuel in all of them, l.</param>
    /// <returns>Its line of the table.</returns>
    public static StrappingLine At(TankSet set, double litres)
    {
        var fuel = new TankFuel(set);
        return Line(fuel, new GaugeFinder(set, fuel, null), litres);
    }

    private static StrappingLine[] Table(TankFuel fuel, GaugeFinder gauge)
    {
        var capacity = fuel.Set.CapacityLitres;
        var step = Steps.FirstOrDefault(s => capacity / s <= MostLines, Steps[^1]);
        return [.. Enumerable.Range(0, (int)Math.Ceiling(capacity / step)).Select(i => i * step).Append(capacity).Select(l => Line(fuel, gauge, l))];
    }

    private static StrappingLine Line(TankFuel fuel, GaugeFinder gauge, double litres)
    {
        var volume = TankUnits.CubicMetres(litres);
        var level = fuel.Level(volume);
        return new StrappingLine
        {
            Litres = litres,
            Tanks = [.. fuel.Set.Tanks.Select((_, i) => (TankUnits.Litres(fuel.VolumeOf(i, level)), fuel.Dip(i, level)))],
            Ohms = gauge.Ohms(volume),
            Needle = gauge.Needle(volume),
        };
    }

    private static StanceLine Stance(TankFuel fuel, GaugeFinder gauge, TankStance stance)
    {
        var unusable = fuel.Unusable(stance);
        return new StanceLine(stance, unusable is { } u ? TankUnits.Litres(u) : null, unusable is { } then ? gauge.NeedleIn(then, stance) : null);
    }

    private static FillFit Fit(TankSet set, FillPart fill) => FillFit.Of(
        fill.IsJoined ? set.Joined! : set.Tanks[fill.Tank].Shape,
        set.Tanks[fill.Tank].Foot,
        [.. fill.Steps.Select(s => new FillStep(TankUnits.CubicMetres(s.Litres), TankUnits.Metres(s.DipMillimetres)))]);
}
