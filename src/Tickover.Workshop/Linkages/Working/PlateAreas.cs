using Tickover.Physics.Flow;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>Open area of a carburettor's plate by docs/physics/flow.md (16), in mm² and degrees.</summary>
internal sealed class PlateAreas(ShaftPart carburettor)
{
    private const double Step = 0.01;
    private const double SquareMillimetres = 1e6;

    private readonly ThrottlePart _throttle = carburettor.Throttle!;
    private readonly ThrottlePlate _plate = new()
    {
        BoreMetres = carburettor.Throttle!.BoreMillimetres / 1000,
        ClosedAngleRadians = double.DegreesToRadians(carburettor.Throttle.SeatedDegrees),
        SpindleDiameterMetres = Math.Min(carburettor.DiameterMillimetres ?? 0, carburettor.Throttle.BoreMillimetres / 2) / 1000,
    };

    public double At(double degrees) => SquareMillimetres * _plate.OpenArea(double.DegreesToRadians(degrees));

    /// <summary>Area on the stop.</summary>
    public double Idle => At(_throttle.IdleDegrees);

    /// <summary>Part of the area that a degree is worth.</summary>
    public double PartPerDegree(double degrees)
    {
        var area = At(degrees);
        return area > 0 ? (At(degrees + Step) - At(degrees - Step)) / (2 * Step * area) : 0;
    }
}
