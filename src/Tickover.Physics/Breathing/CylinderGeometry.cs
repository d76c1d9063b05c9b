namespace Tickover.Physics.Breathing;

/// <summary>The crank mechanism and clearance of one cylinder.</summary>
/// <remarks>All cylinders of an engine are alike; what differs between them lives in barrels and groups.</remarks>
public sealed record CylinderGeometry
{
    /// <summary>Cylinder bore, m. Range 0.03 to 0.15.</summary>
    public required double BoreMetres { get; init; }

    /// <summary>Piston stroke, m. Range 0.03 to 0.15.</summary>
    public required double StrokeMetres { get; init; }

    /// <summary>Connecting-rod length between centres, m. Longer than half the stroke.</summary>
    public required double RodLengthMetres { get; init; }

    /// <summary>Geometric compression ratio, 1. Range 5 to 14.</summary>
    public required double CompressionRatio { get; init; }

    /// <summary>Piston area, m².</summary>
    public double PistonAreaSquareMetres => Math.PI / 4 * BoreMetres * BoreMetres;

    /// <summary>Swept volume of one cylinder, m³.</summary>
    public double SweptVolumeCubicMetres => PistonAreaSquareMetres * StrokeMetres;

    /// <summary>Clearance volume at top dead centre, m³.</summary>
    public double ClearanceVolumeCubicMetres => SweptVolumeCubicMetres / (CompressionRatio - 1);
}
