namespace Tickover.Workshop.Cars;

/// <summary>A car's engine and carburettors as its document describes them, with every default filled in.</summary>
public sealed record Car
{
    /// <summary>The car's name in the workshop.</summary>
    public required string Name { get; init; }

    /// <summary>The document this was read from, JSON text; the one place a change is made.</summary>
    public required string Document { get; init; }

    /// <summary>Layout in words, such as "inline six" or "90° V8".</summary>
    public required string Layout { get; init; }

    /// <summary>Number of cylinders.</summary>
    public required int CylinderCount { get; init; }

    /// <summary>Bank of each cylinder, from 1; as many as cylinders.</summary>
    public required IReadOnlyList<int> Banks { get; init; }

    /// <summary>Firing order, numbers of cylinders from 1.</summary>
    public required IReadOnlyList<int> FiringOrder { get; init; }

    /// <summary>Crank angle of firing of each cylinder behind cylinder 1, degrees, 0 to 720; by number of cylinder.</summary>
    public required IReadOnlyList<double> FiringDegrees { get; init; }

    /// <summary>Figures of the engine (keys <c>engine.*</c>).</summary>
    public required FigureSet Engine { get; init; }

    /// <summary>Figures of the day and the place (keys <c>ambient.*</c>).</summary>
    public required FigureSet Ambient { get; init; }

    /// <summary>Fuel grade as written, such as "E5".</summary>
    public required string FuelGrade { get; init; }

    /// <summary>Where the fuel grade comes from.</summary>
    public required Origin FuelOrigin { get; init; }

    /// <summary>The barrels in order of number.</summary>
    public required IReadOnlyList<CarBarrel> Barrels { get; init; }

    /// <summary>Whether the barrels of a carburettor feed a shared volume rather than a cylinder each.</summary>
    public required bool SharedManifold { get; init; }
}
