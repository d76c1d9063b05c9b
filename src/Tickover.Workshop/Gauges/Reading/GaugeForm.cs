using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>The members of a gauge document and their limits.</summary>
internal static class GaugeForm
{
    public const string Format = "tickover-gauge-1";

    public const int MostStretches = 200;

    public static IReadOnlyList<string> Root { get; } = ["format", "name", "note", "left", "right", "pipe", "vents", "sender", "gauge", "pickup", "fuel", "road"];

    public static IReadOnlyList<string> Tank { get; } = ["note", "heights", "areas", "across", "along", "place", "damping"];

    public static IReadOnlyList<string> Pipe { get; } = ["note", "bore", "length", "losses", "inward"];

    public static IReadOnlyList<string> Sender { get; } = ["note", "tank", "at", "pivot", "arm", "low", "high", "ohms", "reversed"];

    public static IReadOnlyList<string> Gauge { get; } = ["note", "kind", "lag", "ohms", "volts", "madeFor", "earth", "wire", "lamp"];

    public static IReadOnlyList<string> PickUp { get; } = ["note", "tank", "at", "height", "burns", "returns", "returnTo"];

    public static IReadOnlyList<string> Fuel { get; } = ["note", "left", "right"];

    public static IReadOnlyList<string> Road { get; } = ["note", "manoeuvre", "speed", "radius", "turns", "seconds", "toLeft", "carWidth", "drawn"];

    public static IReadOnlyList<string> Stretch { get; } = ["note", "length", "speed", "radius", "bend", "grade", "camber", "stands"];

    public static NumberLimit Height { get; } = new(0, 1500, "mm", "The height above the floor");

    public static NumberLimit Area { get; } = new(0, 20_000, "cm²", "The area of the surface");

    public static NumberLimit Inside { get; } = new(50, 2000, "mm", "The inside of the tank");

    public static NumberLimit Place { get; } = new(-3000, 3000, "mm", "The place");

    public static NumberLimit Damping { get; } = new(0.01, 90, "%", "The damping");

    public static NumberLimit Bore { get; } = new(2, 60, "mm", "The bore");

    public static NumberLimit PipeLength { get; } = new(50, 5000, "mm", "The pipe's length");

    public static NumberLimit Losses { get; } = new(0.5, 1e5, "", "The losses");

    public static NumberLimit Arm { get; } = new(20, 600, "mm", "The float's arm");

    public static NumberLimit Ohms { get; } = new(0, 1000, "Ω", "The resistance");

    public static NumberLimit GaugeOhms { get; } = new(5, 1000, "Ω", "The gauge's resistance");

    public static NumberLimit Lag { get; } = new(0, 120, "s", "The needle's lag");

    public static NumberLimit Volts { get; } = new(4, 16, "V", "The voltage");

    public static NumberLimit Percent { get; } = new(0, 100, "%", "The share");

    public static NumberLimit Flow { get; } = new(0, 200, "L/h", "The flow");

    public static NumberLimit Litres { get; } = new(0, 500, "L", "The fuel");

    public static NumberLimit Speed { get; } = new(0, 200, "km/h", "The speed");

    public static NumberLimit Radius { get; } = new(5, 5000, "m", "The radius");

    public static NumberLimit Turns { get; } = new(0.1, 20, "", "How many times round");

    public static NumberLimit Seconds { get; } = new(1, 3600, "s", "The time");

    public static NumberLimit Width { get; } = new(1, 2.5, "m", "The car's width");

    public static NumberLimit Length { get; } = new(1, 50_000, "m", "The length of the stretch");

    public static NumberLimit Slope { get; } = new(-30, 30, "%", "The slope");
}
