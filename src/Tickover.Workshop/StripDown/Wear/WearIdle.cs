using Tickover.Physics.Flow;
using Tickover.Physics.Inspection;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What leaks do at idle on the engine of a sheet.</summary>
/// <param name="sheet">The sheet.</param>
internal sealed class WearIdle(WearSheet sheet)
{
    private const double Hour = 3600;
    private const double UsualDischarge = 0.8;              // of a nearly shut plate, as the breathing model takes it where a car says nothing
    private const double UsualSpindle = 8e-3;               // m
    private readonly IdlePoint _idle = sheet.Idle;
    private readonly double _perArea = IdleLeak.Through(1, sheet.Idle.Outside, sheet.Idle.BehindPascals);

    /// <summary>Idle air of a barrel, kg/h.</summary>
    public double Air => Hour * _idle.KilogramsPerSecond;

    /// <summary>A leak as a part of the idle air.</summary>
    /// <param name="kilogramsAnHour">The leak, kg/h.</param>
    /// <returns>Part, 1.</returns>
    public double Share(double kilogramsAnHour) => kilogramsAnHour / Air;

    /// <summary>Through a narrow gap.</summary>
    /// <param name="gap">The gap.</param>
    /// <returns>kg/h.</returns>
    public double Through(NarrowGap gap) => Hour * IdleLeak.Through(gap, _idle.Outside, _idle.BehindPascals).KilogramsPerSecond;

    /// <summary>Past a plate.</summary>
    /// <param name="barrel">The barrel.</param>
    /// <param name="areaSquareMetres">Free area, m².</param>
    /// <returns>kg/h.</returns>
    public double Past(WornBarrel barrel, double areaSquareMetres) => Hour * _perArea * Discharge(barrel) * areaSquareMetres;

    /// <summary>How far a plate stands off its seat at idle when so much passes elsewhere.</summary>
    /// <param name="barrel">The barrel.</param>
    /// <param name="kilogramsAnHour">What passes elsewhere, kg/h.</param>
    /// <returns>Degrees; zero where it has to be quite shut; null where its closed angle is not known.</returns>
    public double? PlateDegrees(WornBarrel barrel, double kilogramsAnHour)
    {
        if (Closed(barrel) is not { } closed)
        {
            return null;
        }

        var area = (Air - kilogramsAnHour) / (Hour * _perArea * Discharge(barrel));
        var plate = new ThrottlePlate
        {
            BoreMetres = barrel.Bore * 1e-3,
            ClosedAngleRadians = closed,
            SpindleDiameterMetres = barrel.Bushes.Count > 0 ? barrel.Bushes[0].SpindleMillimetres * 1e-3 : Figure(barrel, "barrel.spindleDiameter") ?? UsualSpindle,
        };
        return area <= 0 ? 0 : 180 / Math.PI * PlateLight.OpeningOf(plate, Math.Min(area, plate.OpenArea(Math.PI / 2)));
    }

    private double? Closed(WornBarrel barrel) => barrel.ClosedDegrees is { } degrees ? degrees * Math.PI / 180 : Figure(barrel, "barrel.closedAngle");

    private double Discharge(WornBarrel barrel) => Figure(barrel, "barrel.plateDischarge") ?? UsualDischarge;

    // barrels of the sheet are those of the car in their order, where there are as many
    private double? Figure(WornBarrel barrel, string key)
    {
        if (sheet.Car is not { } car)
        {
            return null;
        }

        var index = sheet.Barrels.Count == car.Barrels.Count ? sheet.Barrels.ToList().IndexOf(barrel) : 0;
        return car.Barrels[Math.Max(0, index)].Figures.Si(key);
    }
}
