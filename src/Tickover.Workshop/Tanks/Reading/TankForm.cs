namespace Tickover.Workshop.Tanks.Reading;

/// <summary>The members of a tank document.</summary>
internal static class TankForm
{
    public const string Format = "tickover-tank-1";

    public const int MostTanks = 4;

    public const int MostLines = 200;

    public static IReadOnlyList<string> Root { get; } = ["format", "name", "note", "tanks", "capacity", "stances", "fill", "sender", "gauge", "readings"];

    public static IReadOnlyList<string> Shapes { get; } = ["box", "outline", "round", "mesh"];

    public static IReadOnlyList<string> Tank { get; } = ["note", "name", "at", .. Shapes, "wall", "cutOuts", "dip", "pickUp", "crossPipe"];

    public static IReadOnlyList<string> CutOut { get; } = ["note", "at", "box", "outline", "round"];

    public static IReadOnlyList<string> Outline { get; } = ["note", "view", "corners", "depth"];

    public static IReadOnlyList<string> Round { get; } = ["note", "diameter", "length", "ends", "shape", "lies"];

    public static IReadOnlyList<string> Mesh { get; } = ["note", "file", "unit"];

    public static IReadOnlyList<string> PickUp { get; } = ["note", "at", "drawsAir"];

    public static IReadOnlyList<string> Stance { get; } = ["note", "name", "noseUp", "leftUp", "forward", "left"];

    public static IReadOnlyList<string> Fill { get; } = ["note", "tank", "levelled", "steps"];

    public static IReadOnlyList<string> Step { get; } = ["note", "litres", "dip"];

    public static IReadOnlyList<string> Sender { get; } = ["note", "tank", "family", "at", "arm"];

    public static IReadOnlyList<string> Arm { get; } = ["note", "pivot", "length", "lowStop", "highStop"];

    public static IReadOnlyList<string> Gauge { get; } = ["note", "family", "empty", "full"];

    public static IReadOnlyList<string> Reading { get; } = ["note", "litres", "ohms", "needle"];
}
