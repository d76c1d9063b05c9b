namespace Tickover.Physics.Supply;

/// <summary>How much more than the demand a line carries.</summary>
public sealed record SupplyMargin
{
    /// <summary>Multiple of the demand beyond which it is not searched, 1.</summary>
    public const double SearchedTo = 20;

    private const int Halvings = 12; // to a five-thousandth of the doubling it lies in

    private SupplyMargin(double factor, string? limit) => (Factor, FirstToStarve) = (factor, limit);

    /// <summary>Largest multiple of the demand that every float valve still gets, 1; <see cref="SearchedTo"/> where it is more.</summary>
    public double Factor { get; }

    /// <summary>Float valve that runs short first; null where none did.</summary>
    public string? FirstToStarve { get; }

    /// <summary>Looks for the margin of a line.</summary>
    /// <param name="line">The line, without faults.</param>
    /// <param name="duty">The duty, without faults; all demands are multiplied alike.</param>
    /// <returns>The margin; where nothing is taken, the search's end.</returns>
    /// <exception cref="ArgumentException">The line or the duty has faults.</exception>
    public static SupplyMargin Of(SupplyLine line, SupplyDuty duty)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(duty);
        if (line.Faults().Concat(duty.Faults(line)).FirstOrDefault() is { } fault)
        {
            throw new ArgumentException(fault, nameof(line));
        }

        var high = 1.0;
        while (Starved(line, duty, high) is null)
        {
            high *= 2;
            if (high >= SearchedTo)
            {
                return new SupplyMargin(SearchedTo, null);
            }
        }

        return Between(line, duty, high);
    }

    private static SupplyMargin Between(SupplyLine line, SupplyDuty duty, double starves)
    {
        var (low, high) = (starves > 1 ? starves / 2 : 0, starves);
        var first = Starved(line, duty, high);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            var starved = Starved(line, duty, middle);
            (low, high) = starved is null ? (middle, high) : (low, middle);
            first = starved ?? first;
        }

        return new SupplyMargin(low, first); // supply (17)
    }

    private static string? Starved(SupplyLine line, SupplyDuty duty, double factor)
    {
        var demands = duty.DemandKilogramsPerSecond.ToDictionary(pair => pair.Key, pair => factor * pair.Value, StringComparer.Ordinal);
        var point = SupplySolver.Settle(line, duty with { DemandKilogramsPerSecond = demands });
        return point.Feeds ? null : point.Valves.MinBy(valve => valve.MassFlow / valve.DemandKilogramsPerSecond)!.Valve.Name;
    }
}
