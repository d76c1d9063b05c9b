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

    /// <summary>All faults a line can have, each in three sizes.</summary>
    /// <param name="test">The line and how it is tested.</param>
    /// <param name="openFlow">What the good line passes into the can, m³/s.</param>
    /// <returns>The lines; a fault of a part the line has not is left out.</returns>
    public static IEnumerable<FaultyLine> All(SupplyTest test, double openFlow)
    {
        var line = test.Line;
        yield return new FaultyLine(SupplyFaultKind.None, line);
        foreach (var size in new[] { 0, 1, 2 })
        {
            foreach (var faulty in Ways(test, openFlow, size).Concat(Pumps(line, size)).Concat(Rests(line, size)))
            {
                yield return faulty;
            }
        }
    }

    private static IEnumerable<FaultyLine> Ways(SupplyTest test, double openFlow, int size)
    {
        var line = test.Line;
        double[] loadings = [5, 25, 120];
        double[] narrowings = [8e3, 3e4, 1.2e5]; // Pa at the good line's open flow
        double[] vents = [-3e3, -8e3, -2e4];
        if (test.FilterName is { } filter)
        {
            yield return new(SupplyFaultKind.FilterLoaded, Changed(line, part => part is FuelFilter clean && part.Name.Equals(filter, StringComparison.Ordinal) ? clean with { Loading = clean.Loading * loadings[size] } : part));
            yield return new(SupplyFaultKind.DeliveryRestricted, Narrowed(line, filter, narrowings[size], openFlow));
        }

        yield return new(SupplyFaultKind.SuctionRestricted, Narrowed(line, line.Pump!.Name, narrowings[size], openFlow));
        yield return new(SupplyFaultKind.VentStopped, line with { TankGaugePascals = line.TankGaugePascals + vents[size] });
    }

    private static IEnumerable<FaultyLine> Pumps(SupplyLine line, int size)
    {
        double[] slight = [0.9, 0.75, 0.6];
        double[] marked = [0.8, 0.6, 0.4];
        double[] held = [0.4, 0.2, 0.05];
        double[] dry = [0.7, 0.5, 0.3];
        yield return new(SupplyFaultKind.PumpWorn, Scaled(line, marked[size], marked[size]));
        yield return new(SupplyFaultKind.PumpValvesLeak, Scaled(line, slight[size], slight[size]), held[size]);
        yield return new(SupplyFaultKind.AirLeak, Scaled(line, slight[size], dry[size]), SuctionFactor: dry[size]);
        if (line.Pump!.Kind == PumpKind.Electric)
        {
            // Of an electric pump the flow goes with the voltage, the pressure with its square where a motor makes it.
            yield return new(SupplyFaultKind.LowVoltage, Scaled(line, marked[size] * marked[size], marked[size]), VoltsFactor: marked[size]);
        }
    }

    private static IEnumerable<FaultyLine> Rests(SupplyLine line, int size)
    {
        double[] held = [0.5, 0.25, 0.1];
        double[] regulated = [0.8, 0.6, 0.4];
        double[] widened = [1.5, 2, 3];
        yield return new(SupplyFaultKind.FloatValveLeaks, line, held[size]);
        if (line.Parts.Any(part => part is PressureRegulator))
        {
            yield return new(SupplyFaultKind.RegulatorLow, Changed(line, part => part is PressureRegulator good ? good with { SetGaugePascals = good.SetGaugePascals * regulated[size] } : part));
        }

        if (line.Parts.Any(part => part is TankReturn))
        {
            yield return new(SupplyFaultKind.ReturnWide, Changed(line, part => part is TankReturn good ? good with { RestrictorMetres = good.RestrictorMetres * widened[size] } : part));
        }
    }

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
