using Tickover.Physics.Fuels;

namespace Tickover.Workshop.StripDown.Jets;

/// <summary>Jets that were measured on one bench on one day.</summary>
public sealed record JetSheet
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Name of the liquid, such as "E5" or "water".</summary>
    public required string Liquid { get; init; }

    /// <summary>The liquid at a temperature in K.</summary>
    public required Func<double, FuelProperties> Properties { get; init; }

    /// <summary>Temperature of the liquid, °C.</summary>
    public required double Celsius { get; init; }

    /// <summary>Head as the watch starts, mm.</summary>
    public required double HeadAtFirst { get; init; }

    /// <summary>Head as it stops, mm.</summary>
    public required double HeadAtLast { get; init; }

    /// <summary>Length of the bores over their diameter, 1.</summary>
    public required double LengthRatio { get; init; }

    /// <summary>Whether stamps are bores in hundredths of a millimetre, or ml a minute.</summary>
    public required StampKind Stamps { get; init; }

    /// <summary>Head under which a stamp by flow counts, mm; null where stamps are bores.</summary>
    public double? StampHead { get; init; }

    /// <summary>The jets in the order written.</summary>
    public required IReadOnlyList<JetRun> Jets { get; init; }
}
