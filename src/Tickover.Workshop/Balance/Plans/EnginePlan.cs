namespace Tickover.Workshop.Balance.Plans;

/// <summary>What stands on an engine, and what can be turned there: all that balancing needs of a car.</summary>
public sealed record EnginePlan
{
    /// <summary>The car's name in the workshop.</summary>
    public required string Name { get; init; }

    /// <summary>How the carburettors stand and follow one another.</summary>
    public required PlanLayout Layout { get; init; }

    /// <summary>Number of cylinders.</summary>
    public required int Cylinders { get; init; }

    /// <summary>Swept volume of one cylinder, cm³.</summary>
    public required double SweptCubicCentimetres { get; init; }

    /// <summary>Bore at the throttle plate, mm.</summary>
    public required double ThrottleBoreMillimetres { get; init; }

    /// <summary>Angle of the plate where it closes, degrees from square to the bore.</summary>
    public required double ClosedAngleDegrees { get; init; }

    /// <summary>Engine speed at idle, rpm.</summary>
    public required double IdleRpm { get; init; }

    /// <summary>The carburettors, from the front, first bank first.</summary>
    public required IReadOnlyList<PlanCarburettor> Carburettors { get; init; }

    /// <summary>The barrels in order of number.</summary>
    public required IReadOnlyList<PlanBarrel> Barrels { get; init; }

    /// <summary>Number of the carburettor the others are brought to; null where there is none.</summary>
    public int? Reference { get; init; }

    /// <summary>Whether the idle mixture screws let in air, so that out is leaner; else they let out emulsion, and out is richer.</summary>
    public bool HasAirScrews { get; init; }

    /// <summary>What can be turned.</summary>
    public required IReadOnlyList<Adjuster> Adjusters { get; init; }

    /// <summary>Number of banks.</summary>
    public int Banks => Carburettors.Max(c => c.Bank);

    /// <summary>The adjuster with a key.</summary>
    /// <param name="key">Such as "stop:2".</param>
    /// <returns>The adjuster; null where this engine has none of that key.</returns>
    public Adjuster? Find(string key) => Adjusters.FirstOrDefault(a => string.Equals(a.Key, key, StringComparison.OrdinalIgnoreCase));
}
