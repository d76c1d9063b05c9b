using Tickover.Workshop.Supply;

namespace Tickover.Reports.Supply;

/// <summary>The picture of a supply in a sentence.</summary>
internal static class SupplySentence
{
    /// <summary>Makes it.</summary>
    /// <param name="view">What is shown.</param>
    /// <returns>One or two sentences.</returns>
    internal static string Of(SupplyView view)
    {
        var (one, unit) = (view.Case, view.Analysis.Supply.Unit);
        var least = one.Point.Valves.MinBy(valve => valve.InletGaugePascals)!;
        return $"The fuel line from the tank to {one.Point.Valves.Count} float chambers at its heights, {one.Name}, the pressure along it beneath. Least at a float valve: {SupplyWords.Pressure(unit, least.InletGaugePascals)}, at {least.Valve.Name}; the line carries {SupplyWords.Times(one.Margin.Factor)} what is wanted.";
    }
}
