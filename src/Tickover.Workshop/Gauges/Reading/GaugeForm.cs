using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>The members of a gauge document and their limits.</summary>
internal static class GaugeForm
{
    public const string Format = "tickover-gauge-1";

    public static IReadOnlyList<string> Root { get; } = ["format", "name", "note", "left", "right", "pipe", "engine", "sender", "gauge", "lamp", "start", "road"];

    public static IReadOnlyList<string> Tank { get; } = ["note", "areas", "width", "length", "middle", "ahead", "floor", "port", "vent", "baffle"];

    public static IReadOnlyList<string> Pipe { get; } = ["note", "bore", "length", "loss", "restrictor", "flap"];

    public static IReadOnlyList<string> Engine { get; } = ["note", "burns", "returns", "pickUp", "pickUpHeight", "returnTo"];

    public static IReadOnlyList<string> Sender { get; } = ["note", "tank", "at", "pivot", "arm", "lowest", "highest", "empty", "full", "reversed"];

    public static IReadOnlyList<string> Gauge { get; } = ["note", "needle", "empty", "full", "volts", "supply", "added", "fault", "lag"];

    public static IReadOnlyList<string> Lamp { get; } = ["note", "level", "delay"];

    public static IReadOnlyList<string> Road { get; } = ["note", "manoeuvre", "speed", "radius", "after", "pieces"];

    public static IReadOnlyList<string> Piece { get; } = ["note", "seconds", "speed", "to", "radius", "turns", "slope", "camber"];

    public static NumberLimit Height { get; } = new(0, 1500, "mm", "The height");

    public static NumberLimit Area { get; } = new(0, 20000, "cm²", "The plan area");

    public static NumberLimit Span { get; } = new(30, 2500, "mm", "The inside length");

    public static NumberLimit Offset { get; } = new(-3000, 3000, "mm", "The place");

    public static NumberLimit Bore { get; } = new(2, 80, "mm", "The bore");

    public static NumberLimit PipeLength { get; } = new(20, 6000, "mm", "The pipe's length");

    public static NumberLimit Loss { get; } = new(0, 10000, "", "The loss");

    public static NumberLimit Rate { get; } = new(0, 300, "L/h", "The flow");

    public static NumberLimit Arm { get; } = new(20, 800, "mm", "The arm");

    public static NumberLimit Ohms { get; } = new(0, 2000, "Ω", "The resistance");

    public static NumberLimit Volts { get; } = new(2, 30, "V", "The voltage");

    public static NumberLimit Lag { get; } = new(0.05, 120, "s", "The needle's time");

    public static NumberLimit Litres { get; } = new(0, 400, "L", "The fuel");

    public static NumberLimit Speed { get; } = new(0, 250, "km/h", "The speed");

    public static NumberLimit Radius { get; } = new(4, 2000, "m", "The radius");

    public static NumberLimit Seconds { get; } = new(0.5, 7200, "s", "The time");

    public static NumberLimit Delay { get; } = new(0, 120, "s", "The lamp's delay");

    public static NumberLimit Slope { get; } = new(-20, 20, "%", "The slope");
}
