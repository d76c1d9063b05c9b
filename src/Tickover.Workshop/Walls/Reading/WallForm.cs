using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Walls.Reading;

/// <summary>The members of a wall document and their limits.</summary>
internal static class WallForm
{
    public const string Format = "tickover-wall-1";

    public const int MostCorners = 60;

    public const int MostCells = 2_000;

    public const int MostAcross = 60;

    /// <summary>A reading counts in a cell of which at least this part lies inside the outline.</summary>
    public const double LeastInside = 0.02;

    /// <summary>A wall read thicker than the sheet by more than this is a slip.</summary>
    public const double ThickestPart = 1.25;

    public const double UsualStep = 0.05;

    private const string Again = "Measure it again; lengths are in mm.";

    public static IReadOnlyList<string> Root { get; } =
        ["format", "name", "note", "metal", "thickness", "age", "outline", "grid", "reads", "spot", "gauge", "pads", "contacts", "surroundings", "growth", "limits", "surveyed"];

    public static IReadOnlyList<string> Grid { get; } = ["note", "at", "cell", "rows"];

    public static IReadOnlyList<string> Gauge { get; } = ["note", "step", "error"];

    public static IReadOnlyList<string> Pad { get; } = ["note", "name", "from", "to"];

    public static IReadOnlyList<string> Contact { get; } = ["note", "where", "metal", "area", "bare"];

    public static IReadOnlyList<string> Growth { get; } = ["note", "slow", "fast"];

    public static IReadOnlyList<string> Limits { get; } = ["note", "holeChance", "leastLeft", "meanLoss", "thinCells", "longestYears"];

    public static NumberLimit Thickness { get; } = new(0.3, 6, "mm", "The sheet's thickness") { WhatToDo = Again };

    public static NumberLimit Coordinate { get; } = new(-5000, 5000, "mm", "The place") { WhatToDo = Again };

    public static NumberLimit Cell { get; } = new(5, 300, "mm", "The side of a cell") { WhatToDo = Again };

    public static NumberLimit Spot { get; } = new(1, 30, "mm", "The diameter of the spot a reading speaks for") { WhatToDo = Again };

    public static NumberLimit Step { get; } = new(0.001, 0.5, "mm", "The gauge's smallest step") { WhatToDo = Again };

    public static NumberLimit Error { get; } = new(0, 1, "mm", "How far a reading may be off") { WhatToDo = Again };

    public static NumberLimit Age { get; } = new(0.1, 150, "years", "The age") { WhatToDo = "Write how long the pits can have been growing, in years: one number, or the least and the most." };

    public static NumberLimit Area { get; } = new(0.01, 100_000, "cm²", "The wet area") { WhatToDo = "Areas of contact are in cm²." };

    public static NumberLimit Exponent { get; } = new(0.1, 1, "", "The power of growth") { WhatToDo = "Pits grow as a power of their age: 0.3 slow, 0.8 fast, 1 under a pad that never dries." };

    public static NumberLimit Part { get; } = new(0.001, 0.99, "", "The limit") { WhatToDo = "Limits are parts of one: 0.05 is five in a hundred." };

    public static NumberLimit Longest { get; } = new(0.5, 20, "years", "The longest time between surveys") { WhatToDo = "Write it in years." };
}
