namespace Tickover.Workshop.Tanks.Sketching;

/// <summary>What a sketched tank holds.</summary>
public sealed record SketchedTank
{
    /// <summary>The tank as its document describes it.</summary>
    public required TankSet Set { get; init; }

    /// <summary>What it holds to the brim, l.</summary>
    public required double Litres { get; init; }

    /// <summary>One standard deviation of it from the tape alone, l.</summary>
    public required double BandLitres { get; init; }

    /// <summary>Its wall inside, all of it wetted when full, m².</summary>
    public required double WallSquareMetres { get; init; }

    /// <summary>Its section inside, m².</summary>
    public required double SectionSquareMetres { get; init; }

    /// <summary>Its depth inside, mm.</summary>
    public required double DepthMillimetres { get; init; }

    /// <summary>Dip, fuel and wetted wall, the car level, from the floor to the brim: mm, l, m².</summary>
    public required IReadOnlyList<(double DipMillimetres, double Litres, double WettedSquareMetres)> Strapping { get; init; }

    /// <summary>The depth as measured, mm, at which it would hold what was stated; null where nothing was stated.</summary>
    public double? DepthForStatedMillimetres { get; init; }
}
