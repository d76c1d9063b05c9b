using System.Globalization;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>Tanks from what a workshop can measure.</summary>
/// <remarks>Every shape is the inside. A box, a round tank and a side or rear outline are centred on their line of sight; a box stands on z = 0.</remarks>
public static class TankShapes
{
    private const double LongestMetres = 10;

    /// <summary>A box.</summary>
    /// <param name="size">Length along the car, width across, height, m, each above zero.</param>
    /// <param name="wallMetres">Thickness of its wall where the size is the outside's, m; 0 where it is the inside's.</param>
    /// <returns>The box, its middle over the origin, its foot on z = 0.</returns>
    public static TankShapeResult Box(SpaceVector size, double wallMetres = 0)
    {
        var problem = Bad("length", size.X) ?? Bad("width", size.Y) ?? Bad("height", size.Z);
        if (problem is not null)
        {
            return TankShapeResult.Refused(problem);
        }

        var (x, y) = (size.X / 2, size.Y / 2);
        return Prism([new(-x, -y), new(x, -y), new(x, y), new(-x, y)], size.Z, OutlineView.Plan, wallMetres);
    }

    /// <summary>A sketched outline that runs straight on.</summary>
    /// <param name="outline">Its corners, either way round; it closes by itself.</param>
    /// <param name="depthMetres">How far it runs on, m; above zero.</param>
    /// <param name="view">From where it was sketched.</param>
    /// <param name="wallMetres">Thickness of the wall where outline and depth are the outside's, m.</param>
    /// <returns>The tank, or what is wrong with the outline.</returns>
    public static TankShapeResult Prism(IReadOnlyList<OutlinePoint> outline, double depthMetres, OutlineView view, double wallMetres = 0)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var far = outline.Any(p => !(Math.Abs(p.Across) <= LongestMetres && Math.Abs(p.Up) <= LongestMetres && p.Radius is >= 0 and <= LongestMetres));
        var problem = Bad("depth", depthMetres)
            ?? (far ? "A corner of the outline is further than 10 m off, or its radius is below zero. Give the corners in the unit asked for." : null)
            ?? (wallMetres is >= 0 and <= LongestMetres ? null : "The wall's thickness is zero or more.");
        return problem is null ? PrismBuilder.Of(outline, depthMetres, view, wallMetres) : TankShapeResult.Refused(problem);
    }

    /// <summary>A round tank, lying or standing.</summary>
    /// <param name="tank">What was measured.</param>
    /// <returns>The tank, its middle on the origin.</returns>
    public static TankShapeResult Cylinder(RoundTank tank)
    {
        ArgumentNullException.ThrowIfNull(tank);
        var problem = Bad("diameter", tank.DiameterMetres)
            ?? (tank.LengthMetres is >= 0 and <= LongestMetres ? null : "The straight length is zero or more, up to 10 m.")
            ?? (tank.HeadMetres >= 0 && tank.HeadMetres <= tank.DiameterMetres / 2 ? null : "An end bulges from nothing to half the diameter.")
            ?? (tank.LengthMetres + tank.HeadMetres > 0 ? null : "The tank has neither length nor bulging ends, so it holds nothing.");
        return problem is null ? TankShapeResult.Of(RoundBuilder.Of(tank)) : TankShapeResult.Refused(problem);
    }

    /// <summary>A tank less what is cut out of it: a tunnel, a well for the axle, a box for the pump.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="cutOuts">Shapes that do not bulge inwards; they may stick out of the tank where the tank itself does not.</param>
    /// <returns>The tank cut, or why it cannot be.</returns>
    public static TankShapeResult Cut(TankShape tank, IReadOnlyList<TankShape> cutOuts)
    {
        ArgumentNullException.ThrowIfNull(tank);
        ArgumentNullException.ThrowIfNull(cutOuts);
        return CutOuts.Of(tank, cutOuts);
    }

    private static string? Bad(string what, double metres) => metres is > 0 and <= LongestMetres
        ? null
        : string.Create(CultureInfo.InvariantCulture, $"The {what} is above zero and at most 10 m; {metres * 1000:0.###} mm was given.");
}
