namespace Tickover.Physics.Supply;

/// <summary>A line at work: pressure, flow and warmth at every part.</summary>
public sealed record SupplyPoint
{
    /// <summary>The duty.</summary>
    public required SupplyDuty Duty { get; init; }

    /// <summary>The parts, each after the one it hangs on.</summary>
    public required IReadOnlyList<PartPoint> Parts { get; init; }

    /// <summary>The float valves in the line's order.</summary>
    public required IReadOnlyList<ValvePoint> Valves { get; init; }

    /// <summary>How the search ended.</summary>
    public required SupplyEnding Ending { get; init; }

    /// <summary>Steps it took.</summary>
    public required int Iterations { get; init; }

    /// <summary>Largest pressure that does not meet, Pa.</summary>
    public required double ResidualPascals { get; init; }

    /// <summary>Flow at which the fuel boils at the pump's inlet, m³/s; infinite without a pump or where it never does.</summary>
    public required double SuctionBoilsAtFlow { get; init; }

    /// <summary>Whether the formulas were used within their ranges.</summary>
    public required Validity Validity { get; init; }

    /// <summary>The part of least pressure above vapour pressure between tank and pump; null without a pump.</summary>
    public PartPoint? WorstSuction
    {
        get
        {
            var before = Parts.TakeWhile(part => part.Part is not FuelPump).ToList();
            return before.Count < Parts.Count && before.Count > 0 ? before.MinBy(part => part.VapourMarginPascals) : null;
        }
    }

    /// <summary>The part of least pressure above vapour pressure anywhere.</summary>
    public PartPoint WorstVapour => Parts.MinBy(part => part.VapourMarginPascals)!;

    /// <summary>Whether every valve gets what the engine takes.</summary>
    public bool Feeds => Valves.All(valve => !valve.IsStarved);

    /// <summary>The part of a name.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The part at work; null for an unknown name.</returns>
    public PartPoint? Of(string name) => Parts.FirstOrDefault(part => part.Part.Name.Equals(name, StringComparison.Ordinal));
}
