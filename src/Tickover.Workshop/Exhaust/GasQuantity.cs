namespace Tickover.Workshop.Exhaust;

/// <summary>One thing a gas reading holds: its name, unit and what an instrument can show of it.</summary>
/// <param name="Name">Name a person reads.</param>
/// <param name="Unit">Unit; empty where there is none.</param>
/// <param name="Minimum">Least it can show: a zero that is off, no more.</param>
/// <param name="Maximum">Most it can show.</param>
/// <param name="Units">Units that may stand behind the number, in small letters.</param>
internal sealed record GasQuantity(string Name, string Unit, double Minimum, double Maximum, IReadOnlyList<string> Units)
{
    private static readonly string[] Shares = ["%", "vol%", "vol.%", "vol-%", "vol %", "% vol", "%vol", "% vol.", "pct"];

    internal static GasQuantity CarbonMonoxide { get; } = new("CO", "%", -1, 20, Shares);

    internal static GasQuantity Hydrocarbons { get; } = new("HC", "ppm", -200, 60_000, ["ppm", "ppm hexane", "ppm vol", "ppm c6", "ppm vol hex"]);

    internal static GasQuantity CarbonDioxide { get; } = new("CO₂", "%", 1, 20, Shares);

    internal static GasQuantity Oxygen { get; } = new("O₂", "%", -2, 21.5, Shares);

    internal static GasQuantity Lambda { get; } = new("λ shown", "", 0.4, 10, []);

    internal static GasQuantity Speed { get; } = new("Speed", "rpm", 0, 15_000, ["rpm", "1/min", "/min", "u/min", "min-1"]);

    internal static GasQuantity Oil { get; } = new("Oil", "°C", -40, 200, ["°c", "c", "degc"]);
}
