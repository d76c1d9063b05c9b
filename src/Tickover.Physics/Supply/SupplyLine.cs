namespace Tickover.Physics.Supply;

/// <summary>A fuel line from the tank to the float valves: a tree of parts, each naming the one before it.</summary>
public sealed record SupplyLine
{
    /// <summary>The parts in any order.</summary>
    public required IReadOnlyList<SupplyPart> Parts { get; init; }

    /// <summary>Height of the fuel in the tank above the datum, m.</summary>
    public double TankSurfaceHeightMetres { get; init; }

    /// <summary>Pressure in the tank above the air, Pa; below zero where the vent is stopped.</summary>
    public double TankGaugePascals { get; init; }

    /// <summary>The float valves in the order given.</summary>
    public IEnumerable<FloatValve> Valves => Parts.OfType<FloatValve>();

    /// <summary>The pump; null where the fuel runs down by itself.</summary>
    public FuelPump? Pump => Parts.OfType<FuelPump>().FirstOrDefault();

    /// <summary>What keeps the line from being reckoned with.</summary>
    /// <returns>One sentence a fault; empty where it can be solved.</returns>
    public IReadOnlyList<string> Faults()
    {
        var faults = Parts.SelectMany(part => part.OwnFaults()).ToList();
        faults.AddRange(Parts.GroupBy(part => part.Name, StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => $"Two parts are called {group.Key}; each needs a name of its own."));
        if (!double.IsFinite(TankSurfaceHeightMetres) || !double.IsFinite(TankGaugePascals) || Parts.Any(part => !double.IsFinite(part.OutletHeightMetres)))
        {
            faults.Add("A height or the pressure in the tank is not a number.");
        }

        faults.AddRange(Parts.SelectMany(part => SupplyText.Negative(part.Name, "heat taken in", part.HeatTakenWattsPerKelvin)));
        if (faults.Count == 0)
        {
            faults.AddRange(Joints());
        }

        return faults;
    }

    /// <summary>The way from the tank to a part, that part last.</summary>
    /// <param name="name">Name of the part.</param>
    /// <returns>The parts from the tank on; empty for an unknown name.</returns>
    public IReadOnlyList<SupplyPart> WayTo(string name)
    {
        var way = new List<SupplyPart>();
        var at = Find(name);
        while (at is not null && way.Count <= Parts.Count)
        {
            way.Add(at);
            at = at.After.Length == 0 ? null : Find(at.After);
        }

        way.Reverse();
        return way;
    }

    /// <summary>The line opened behind a part and held into a can, all other branches clamped shut.</summary>
    /// <param name="name">The last part the fuel still passes.</param>
    /// <param name="endBoreMetres">Bore of the open end, m; above zero.</param>
    /// <param name="endHeightMetres">Height of the can's rim above the datum, m.</param>
    /// <returns>The line to the can.</returns>
    /// <exception cref="ArgumentException">There is no such part, or it is an end.</exception>
    public SupplyLine OpenedAfter(string name, double endBoreMetres, double endHeightMetres)
    {
        var way = WayTo(name);
        if (way.Count == 0 || way[^1].IsEnd)
        {
            throw new ArgumentException($"The line has no part {name} that could be opened behind.", nameof(name));
        }

        return this with
        {
            Parts = [.. way, new OpenEnd { Name = "open end", After = name, BoreMetres = endBoreMetres, OutletHeightMetres = endHeightMetres, Zone = way[^1].Zone }],
        };
    }

    private SupplyPart? Find(string name) => Parts.FirstOrDefault(part => part.Name.Equals(name, StringComparison.Ordinal));

    private IEnumerable<string> Joints()
    {
        var first = Parts.Where(part => part.After.Length == 0).ToList();
        if (first.Count != 1)
        {
            yield return first.Count == 0 ? "No part stands in the tank; leave out \"after\" of the pick-up." : $"{string.Join(" and ", first.Select(part => part.Name))} all stand in the tank; one pick-up only.";
        }

        foreach (var part in Parts.Where(part => part.After.Length > 0))
        {
            if (Find(part.After) is not { } before)
            {
                yield return $"{part.Name} comes after {part.After}, which is not in the line.";
            }
            else if (before.IsEnd)
            {
                yield return $"{part.Name} comes after {part.After}, where the line ends.";
            }
            else if (WayTo(part.Name)[0].After.Length > 0)
            {
                yield return $"{part.Name} hangs on parts that do not reach the tank.";
            }
        }

        foreach (var fault in Ends().Concat(Pumps()))
        {
            yield return fault;
        }
    }

    private IEnumerable<string> Ends()
    {
        foreach (var part in Parts.Where(part => !part.IsEnd && !Parts.Any(next => next.After.Equals(part.Name, StringComparison.Ordinal))))
        {
            yield return $"{part.Name} leads nowhere; a branch ends with a float valve or a return.";
        }

        if (!Parts.Any(part => part is FloatValve or OpenEnd))
        {
            yield return "The line feeds no float valve.";
        }
    }

    private IEnumerable<string> Pumps()
    {
        if (Parts.OfType<FuelPump>().Count() > 1)
        {
            yield return "Two pumps are in the line; only one can be reckoned with.";
        }

        if (Parts.OfType<PressureRegulator>().Count() > 1)
        {
            yield return "Two regulators are in the line; only one can be reckoned with.";
        }

        if (Pump is { } pump && WayTo(pump.Name).SkipLast(1).Any(part => Parts.Count(next => next.After.Equals(part.Name, StringComparison.Ordinal)) > 1))
        {
            yield return $"{pump.Name} sits behind a branch; the pump must come before the first.";
        }
    }
}
