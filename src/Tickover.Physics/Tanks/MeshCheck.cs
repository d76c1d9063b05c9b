using System.Globalization;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>Makes one closed surface of loose triangles, or says why that cannot be.</summary>
internal static class MeshCheck
{
    private const double WeldPart = 1e-6;      // of the mesh's size: nearer corners are one
    private const double SheetPart = 0.5;      // an inner surface that holds more than this of the outer's is the inside of a sheet
    private const double Nothing = 1e-9;       // of the cube of the size
    private const double PerMetre = 1000;

    public static TankShapeResult Of(List<SpaceVector> corners, double unit)
    {
        if (corners.Count < 4 * 3)
        {
            return TankShapeResult.Refused("The mesh has fewer than four triangles; nothing can be inside.");
        }

        var mesh = new WeldedMesh(corners, WeldPart);
        if (mesh.Fault() is { } fault)
        {
            return TankShapeResult.Refused(Fault(fault, unit));
        }

        var shells = mesh.Shells().Select(s => Shape(s, unit)).OrderByDescending(s => Math.Abs(s.VolumeCubicMetres)).ToArray();
        var outer = shells[0];
        var size = (outer.Highest - outer.Lowest).Length;
        if (Math.Abs(outer.VolumeCubicMetres) <= Nothing * size * size * size)
        {
            return TankShapeResult.Refused("The mesh holds no volume: it is flat, or its two sides lie on one another.");
        }

        return shells.Length == 1 ? Single(outer) : Several(shells);
    }

    private static TankShapeResult Single(TankShape shell) => shell.VolumeCubicMetres > 0
        ? TankShapeResult.Of(shell)
        : TankShapeResult.Of(Turned(shell), "The mesh was inside out, every face looking inwards; it was turned.");

    private static TankShapeResult Several(TankShape[] shells)
    {
        var (outer, inner) = (shells[0], shells[1]);
        var opposed = outer.VolumeCubicMetres * inner.VolumeCubicMetres < 0;
        if (opposed && Math.Abs(inner.VolumeCubicMetres) > SheetPart * Math.Abs(outer.VolumeCubicMetres))
        {
            return TankShapeResult.Of(
                inner.VolumeCubicMetres > 0 ? inner : Turned(inner),
                "The mesh draws the sheet, outside and inside; the inside was taken.");
        }

        return TankShapeResult.Refused(string.Create(
            CultureInfo.InvariantCulture,
            $"The mesh is {shells.Length} separate surfaces. Export the inside of one tank alone, without baffles, brackets and fittings."));
    }

    private static TankShape Shape(IEnumerable<TankFacet> facets, double unit) => new([.. facets.Select(f => new TankFacet(unit * f.A, unit * f.B, unit * f.C))]);

    private static TankShape Turned(TankShape shape) => new([.. shape.Facets.Select(f => f.Turned())]);

    private static string Fault(MeshFault fault, double unit)
    {
        var at = unit * PerMetre * fault.Near;
        var where = string.Create(CultureInfo.InvariantCulture, $"near ({at.X:0.#}, {at.Y:0.#}, {at.Z:0.#}) mm");
        return fault.Kind switch
        {
            MeshFaultKind.Open => string.Create(CultureInfo.InvariantCulture, $"The mesh is open: {fault.Edges} edges have no neighbour, the first {where}. Close the filler, the sender's hole and the unions before export."),
            MeshFaultKind.Turned => string.Create(CultureInfo.InvariantCulture, $"Some faces of the mesh look inwards and some outwards: {fault.Edges} edges disagree, the first {where}. Make the faces agree and export again."),
            _ => string.Create(CultureInfo.InvariantCulture, $"More than two faces of the mesh meet in one edge, {where}: {fault.Edges} such edges. Leave out baffles and export the inside alone."),
        };
    }
}
