namespace Tickover.Workshop.Supply.Reading;

/// <summary>The members of a supply document.</summary>
internal static class SupplyForm
{
    public const string Format = "tickover-supply-1";

    public const int MostParts = 60;

    public const int MostPoints = 20;

    public static IReadOnlyList<string> Root { get; } = ["format", "name", "note", "pressure", "fuel", "tank", "parts", "engine", "cases", "attitude", "readings"];

    public static IReadOnlyList<string> Fuel { get; } = ["note", "grade", "vapourPressure", "evaporatedAt70"];

    public static IReadOnlyList<string> Tank { get; } = ["note", "surface", "vacuum"];

    public static IReadOnlyList<string> Engine { get; } = ["note", "power", "consumption", "fullLoad", "idle", "smallestJet", "rpm", "idleRpm", "car"];

    public static IReadOnlyList<string> Cases { get; } = ["note", "idle", "fullLoad", "hot"];

    public static IReadOnlyList<string> Case { get; } = ["note", "tank", "floor", "bonnet", "altitude", "load", "rpm", "volts"];

    public static IReadOnlyList<string> Attitude { get; } = ["note", "bend", "braking", "slope"];

    public static IReadOnlyList<string> Readings { get; } = ["note", "deadHead", "flowBeforeFilter", "flowAtChamber", "suction", "held", "volts"];

    public static IReadOnlyList<string> Point { get; } = ["flow", "pressure"];

    public static IReadOnlyList<string> Workshop { get; } = ["note", "deadHead", "openFlow"];

    public static IReadOnlyList<string> Drop { get; } = ["pressure", "flow", "element"];

    private static readonly string[] Every = ["note", "name", "kind", "after", "height", "where"];

    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Kinds { get; } = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
    {
        ["pick-up"] = [.. Every, "bore", "loss"],
        ["pipe"] = [.. Every, "bore", "length", "bends", "loss", "roughness", "outside", "insulated"],
        ["tap"] = [.. Every, "bore", "loss"],
        ["union"] = [.. Every, "bore", "loss"],
        ["tee"] = [.. Every, "bore", "loss"],
        ["filter"] = [.. Every, "drop", "loading", "fineness"],
        ["pump"] = [.. Every, "drive", "curve", "workshop", "rpm", "growsTo", "volts", "suctionHead"],
        ["regulator"] = [.. Every, "set", "droop"],
        ["float valve"] = [.. Every, "seat", "discharge", "leverRatio", "floatArea", "chamberArea", "setAt", "spill", "jetDepth", "jetsAhead", "jetsLeft", "share"],
        ["return"] = [.. Every, "restrictor"],
    };
}
