namespace Tickover.Workshop.Cars.Reading;

/// <summary>The members of a car document besides the catalogue's figures, and their limits.</summary>
internal static class DocumentForm
{
    /// <summary>The marker of this version of the document.</summary>
    public const string Format = "tickover-car-1";

    /// <summary>One barrel on each cylinder.</summary>
    public const string SeparateManifold = "separate";

    /// <summary>Barrels feed a volume that cylinders share.</summary>
    public const string SharedManifold = "shared";

    /// <summary>Most cylinders, and most barrels.</summary>
    public const int MostCylinders = 12;

    /// <summary>Longest name or layout.</summary>
    public const int LongestText = 80;

    /// <summary>Members of the document itself.</summary>
    public static IReadOnlyList<string> Root { get; } =
        ["format", "name", "note", "engine", "fuel", "ambient", "manifold", "barrels", "carburettors"];

    /// <summary>Members of "engine".</summary>
    public static IReadOnlyList<string> Engine { get; } =
        ["note", "layout", "cylinders", "firingOrder", "firingAngles", "banks", .. FigureCatalogue.Engine.Select(e => e.Name)];

    /// <summary>Members of "ambient".</summary>
    public static IReadOnlyList<string> Ambient { get; } = ["note", .. FigureCatalogue.Ambient.Select(e => e.Name)];

    /// <summary>Settings of a barrel, wherever they stand.</summary>
    public static IReadOnlyList<string> Settings { get; } =
        ["note", "emulsionTube", "emulsionHoles", "progressionHoles", .. FigureCatalogue.Barrel.Select(e => e.Name)];

    /// <summary>Members of a carburettor.</summary>
    public static IReadOnlyList<string> Carburettor { get; } = ["name", "barrels", .. Settings];

    /// <summary>Members of a barrel.</summary>
    public static IReadOnlyList<string> Barrel { get; } = ["feeds", .. Settings];
}
