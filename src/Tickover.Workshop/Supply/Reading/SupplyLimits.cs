using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>What the numbers of a supply document may be.</summary>
internal static class SupplyLimits
{
    private const string Again = "Measure it again, or look at the unit: bores and heights are in mm, pipes in m, flows in litres a minute.";

    public static NumberLimit Bore { get; } = Of(1, 30, "mm", "The bore");

    public static NumberLimit Seat { get; } = Of(0.5, 6, "mm", "The bore of the seat");

    public static NumberLimit Restrictor { get; } = Of(0.3, 6, "mm", "The bore of the restrictor");

    public static NumberLimit Length { get; } = Of(0.01, 20, "m", "The length");

    public static NumberLimit Height { get; } = Of(-5000, 5000, "mm", "The height");

    public static NumberLimit Roughness { get; } = Of(0, 200, "µm", "The roughness");

    public static NumberLimit Outside { get; } = Of(2, 40, "mm", "The outside diameter");

    public static NumberLimit Loss { get; } = Of(0, 200, "", "The loss in velocity heads");

    public static NumberLimit Bends { get; } = Of(0, 40, "", "The number of bends");

    public static NumberLimit Flow { get; } = Of(0, 20, "l/min", "The flow");

    public static NumberLimit SomeFlow { get; } = Of(0.01, 20, "l/min", "The flow");

    public static NumberLimit Share { get; } = Of(0, 100, "%", "The share");

    public static NumberLimit Loading { get; } = Of(1, 1000, "", "The loading");

    public static NumberLimit Fineness { get; } = Of(1, 1000, "µm", "The fineness");

    public static NumberLimit Rpm { get; } = Of(50, 12_000, "rev/min", "The engine speed");

    public static NumberLimit Volts { get; } = Of(3, 32, "V", "The voltage");

    public static NumberLimit SuctionHead { get; } = Of(0, 10, "m", "The suction head it needs");

    public static NumberLimit Ratio { get; } = Of(0.5, 20, "", "The lever ratio");

    public static NumberLimit Discharge { get; } = Of(0.2, 1, "", "The discharge coefficient");

    public static NumberLimit Area { get; } = Of(0.5, 200, "cm²", "The area");

    public static NumberLimit Rise { get; } = Of(0.5, 60, "mm", "The height of the spill");

    public static NumberLimit Depth { get; } = Of(1, 100, "mm", "The depth of the jet");

    public static NumberLimit Offset { get; } = Of(-200, 200, "mm", "The distance");

    public static NumberLimit Celsius { get; } = Of(-30, 140, "°C", "The temperature");

    public static NumberLimit Altitude { get; } = Of(-400, 5500, "m", "The height above the sea");

    public static NumberLimit Power { get; } = Of(1, 1000, "kW", "The power");

    public static NumberLimit Consumption { get; } = Of(0.2, 0.6, "kg/kWh", "The consumption");

    public static NumberLimit LitresHour { get; } = Of(0.05, 400, "l/h", "The fuel taken");

    public static NumberLimit Jet { get; } = Of(0.1, 5, "mm", "The smallest jet");

    public static NumberLimit VapourPressure { get; } = Of(10, 130, "kPa", "The vapour pressure at 37.8 °C");

    public static NumberLimit Part { get; } = Of(0, 150, "%", "The load");

    public static NumberLimit Gravity { get; } = Of(0, 2, "g", "The acceleration");

    public static NumberLimit Held { get; } = Of(0, 110, "%", "The pressure held");

    /// <summary>A pressure in the document's unit.</summary>
    public static NumberLimit Pressure(PressureUnit unit, string what, double leastBar, double mostBar)
    {
        var symbol = SupplyUnits.Symbol(unit);
        double Rounded(double bar) => Math.Round(SupplyUnits.FromPascals(unit, bar * 1e5), 3);
        return new NumberLimit(Rounded(leastBar), Rounded(mostBar), symbol, what) { WhatToDo = $"Pressures of this document are in {symbol}; \"pressure\" at its head says so." };
    }

    private static NumberLimit Of(double least, double most, string unit, string what) => new(least, most, unit, what) { WhatToDo = Again };
}
