namespace Tickover.Workshop.Linkages.Reading;

/// <summary>The members of a linkage document and their limits.</summary>
internal static class LinkageForm
{
    public const string Format = "tickover-linkage-1";

    public const int MostShafts = 24;

    public const int MostLevers = 6;

    /// <summary>Play of a ball end where none is stated, mm: what a worn one has and a finger just feels.</summary>
    public const double UsualPlay = 0.1;

    /// <summary>A rod of which nothing is said is set by half turns.</summary>
    public const double HalfTurn = 0.5;

    public const double EighthTurn = 0.125;

    public static IReadOnlyList<string> Root { get; } = ["format", "name", "note", "pedal", "shafts", "carburettors", "rods", "couplings", "warmth"];

    public static IReadOnlyList<string> Pedal { get; } = ["note", "shaft", "travel", "turns"];

    public static IReadOnlyList<string> Shaft { get; } = ["note", "name", "at", "axis", "mount", "diameter", "metal", "levers"];

    public static IReadOnlyList<string> Carburettor { get; } = [.. Shaft, "opens", "bore", "plates", "seated", "idle", "full", "spring"];

    public static IReadOnlyList<string> Lever { get; } = ["note", "name", "length", "angle", "along", "clamped"];

    public static IReadOnlyList<string> Spring { get; } = ["note", "torque", "rate", "along"];

    public static IReadOnlyList<string> Rod { get; } = ["note", "name", "from", "to", "length", "thread", "play"];

    public static IReadOnlyList<string> Thread { get; } = ["note", "pitch", "turnbuckle", "step"];

    public static IReadOnlyList<string> Coupling { get; } = ["note", "name", "from", "to", "ahead", "at", "screw"];

    public static IReadOnlyList<string> Screw { get; } = ["note", "pitch", "arm"];

    public static IReadOnlyList<string> Warmth { get; } = ["note", "rise", "rods", "stays"];
}
