namespace Tickover.Physics.Breathing;

/// <summary>Cylinder volume over the crank angle.</summary>
/// <param name="cylinder">The crank mechanism.</param>
public sealed class CrankMotion(CylinderGeometry cylinder)
{
    private readonly double _crank = cylinder.StrokeMetres / 2;
    private readonly double _rod = cylinder.RodLengthMetres;

    /// <summary>Volume and its slope at an angle.</summary>
    /// <param name="degrees">Crank angle after firing top dead centre, degrees.</param>
    /// <returns>Volume in m³ and its slope in m³ a degree: breathing (4).</returns>
    public CylinderVolume At(double degrees)
    {
        var angle = degrees * Math.PI / 180;
        var (sin, cos) = Math.SinCos(angle);
        var rodAxis = Math.Sqrt(_rod * _rod - _crank * _crank * sin * sin);
        var down = _crank * (1 - cos) + _rod - rodAxis;
        var slope = _crank * sin + _crank * _crank * sin * cos / rodAxis;
        var area = cylinder.PistonAreaSquareMetres;
        return new CylinderVolume(
            cylinder.ClearanceVolumeCubicMetres + area * down, area * slope * Math.PI / 180);
    }
}
