namespace Tickover.Physics.Supply;

/// <summary>A line with a fault put into it, from slight to bad.</summary>
/// <param name="Kind">The fault.</param>
/// <param name="Line">The line with it.</param>
/// <param name="PressureHeld">Part of the pressure left after a minute, 1; null where the fault does not touch it.</param>
/// <param name="VoltsFactor">Voltage at the pump over what it should be, 1.</param>
/// <param name="SuctionFactor">Suction read over that of the flow, 1: air in the line sucks more lightly.</param>
internal sealed record FaultyLine(SupplyFaultKind Kind, SupplyLine Line, double? PressureHeld = null, double VoltsFactor = 1, double SuctionFactor = 1)
{
    private const string Narrowing = "narrowing";
    private const int Sizes = 6; // a step apart is about what gauge and stopwatch tell apart

    /// <summary>All faults a line can have, each in several sizes.</summary>
    /// <param name="test">The line and how it is tested.</param>
    /// <param name="openFlow">What the good line passes into the can, m³/s.</param>
    /// <returns>The lines; a fault of a part the line has not is left out.</returns>
    public static IEnumerable<FaultyLine> All(SupplyTest test, double openFlow)
    {
        var line = test.Line;
        yield return new FaultyLine(SupplyFaultKind.None, line);
        for (var i = 0; i < Sizes; i++)
        {
            var size = i / (Sizes - 1.0);
            foreach (var faulty in Ways(test, openFlow, size).Concat(Pumps(line, size)).Concat(Rests(line, size)))
            {
                yield return faulty;
            }
        }
    }

    private static IEnumerable<FaultyLine> Ways(SupplyTest test, double openFlow, double size)
    {
        var line = test.Line;
        var narrowing = Times(5e3, 3e5, size); // Pa at the good line's open flow
        if (test.FilterName is { } filter)
        {
            yield return new(SupplyFaultKind.FilterLoaded, Changed(line, part => part is FuelFilter clean && part.Name.Equals(filter, StringComparison.Ordinal) ? clean with { Loading = clean.Loading * Times(4, 400, size) } : part));
            yield return new(SupplyFaultKind.DeliveryRestricted, Narrowed(line, filter, narrowing, openFlow));
        }

        yield return new(SupplyFaultKind.SuctionRestricted, Narrowed(line, line.Pump!.Name, narrowing, openFlow));
        yield return new(SupplyFaultKind.VentStopped, line with { TankGaugePascals = line.TankGaugePascals - Times(2e3, 2e4, size) });
    }

    private static IEnumerable<FaultyLine> Pumps(SupplyLine line, double size)
    {
        var slight = Times(0.92, 0.55, size);
        var marked = Times(0.85, 0.35, size);
        var dry = Times(0.75, 0.25, size);
        yield return new(SupplyFaultKind.PumpWorn, Scaled(line, marked, marked));
        yield return new(SupplyFaultKind.PumpValvesLeak, Scaled(line, slight, slight), Times(0.5, 0.03, size));
        yield return new(SupplyFaultKind.AirLeak, Scaled(line, slight, dry), SuctionFactor: dry);
        if (line.Pump!.Kind == PumpKind.Electric)
        {
            // Of an electric pump the flow goes with the voltage, the pressure with its square where a motor makes it.
            yield return new(SupplyFaultKind.LowVoltage, Scaled(line, marked * marked, marked), VoltsFactor: marked);
        }
    }

    private static IEnumerable<FaultyLine> Rests(SupplyLine line, double size)
    {
        yield return new(SupplyFaultKind.FloatValveLeaks, line, Times(0.6, 0.08, size));
        if (line.Parts.Any(part => part is PressureRegulator))
        {
            yield return new(SupplyFaultKind.RegulatorLow, Changed(line, part => part is PressureRegulator good ? good with { SetGaugePascals = good.SetGaugePascals * Times(0.85, 0.35, size) } : part));
        }

        if (line.Parts.Any(part => part is TankReturn))
        {
            yield return new(SupplyFaultKind.ReturnWide, Changed(line, part => part is TankReturn good ? good with { RestrictorMetres = good.RestrictorMetres * Times(1.4, 3, size) } : part));
        }
    }

    // From slight to bad in even ratios.
    private static double Times(double slight, double bad, double size) => slight * Math.Pow(bad / slight, size);

    private static SupplyLine Changed(SupplyLine line, Func<SupplyPart, SupplyPart> change) => line with { Parts = [.. line.Parts.Select(change)] };

    private static SupplyLine Scaled(SupplyLine line, double pressure, double flow) =>
        Changed(line, part => part is FuelPump pump
            ? pump with { Curve = new PumpCurve([.. pump.Curve.Points.Select(point => (point.Flow * flow, point.Pressure * pressure))]) }
            : part);

    // A narrow place takes the square of the flow, whatever it is.
    private static SupplyLine Narrowed(SupplyLine line, string before, double pascals, double openFlow)
    {
        var part = line.Parts.First(p => p.Name.Equals(before, StringComparison.Ordinal));
        var way = line.WayTo(before);
        var narrow = new FuelFilter
        {
            Name = Narrowing,
            After = part.After,
            OutletHeightMetres = way.Count > 1 ? way[^2].OutletHeightMetres : line.TankSurfaceHeightMetres,
            Zone = part.Zone,
            ElementResistance = 0,
            UnionResistance = pascals / (openFlow * openFlow),
        };
        var moved = Changed(line, p => ReferenceEquals(p, part) ? p with { After = Narrowing } : p);
        return moved with { Parts = [.. moved.Parts, narrow] };
    }
}
