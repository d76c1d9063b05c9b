using System.Globalization;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tanks.Sketching;

/// <summary>Works out a sketch: by way of its tank document, so that sketch and document can never differ.</summary>
public static class SketchAnalyst
{
    /// <summary>What a tape is good to across sheet metal, mm, one standard deviation: an assumption of this project.</summary>
    public const double TapeMillimetres = 2;

    private const int MostLines = 10;
    private static readonly double[] Steps = [10, 20, 25, 50, 100, 200, 500];

    /// <summary>Works it out.</summary>
    /// <param name="sketch">The sketch.</param>
    /// <returns>The tank, or what is missing or wrong.</returns>
    public static SketchAnswer Of(OutlineSketch sketch)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        var points = sketch.Points();
        var outline = OutlineCheck.Of(points);
        var missing = Missing(sketch);
        if (sketch.Corners.Count < 3)
        {
            return new SketchAnswer(outline, missing, [], null);
        }

        if (outline.Fault is { } fault)
        {
            return new SketchAnswer(outline, missing, [fault.Words], null);
        }

        if (missing.Length > 0)
        {
            return new SketchAnswer(outline, missing, [], null);
        }

        var reading = TankDocument.Read(SketchDocument.New(sketch, "sketch"));
        return reading.Set is { } set
            ? new SketchAnswer(outline, [], [.. reading.Warnings.Select(Words)], Tank(sketch, points, set))
            : new SketchAnswer(outline, [], [.. reading.Faults.Select(Words)], null);
    }

    private static string[] Missing(OutlineSketch sketch)
    {
        var more = 3 - sketch.Corners.Count;
        var corners = more switch
        {
            3 => "Set the first corner.",
            2 => "One corner so far. Two more make an outline.",
            1 => "Two corners so far. One more makes an outline.",
            _ => null,
        };
        var depth = sketch.Depth is null ? "Type the depth: how far the tank runs on along the line of sight." : null;
        return [.. new[] { corners, depth }.OfType<string>()];
    }

    private static SketchedTank Tank(OutlineSketch sketch, IReadOnlyList<OutlinePoint> points, TankSet set)
    {
        var tank = set.Tanks[0];
        var litres = tank.CapacityLitres;
        var inside = sketch.Depth!.Value - 2 * sketch.Wall;
        return new SketchedTank
        {
            Set = set,
            Litres = litres,
            BandLitres = TankUnits.Litres(OutlineCheck.BandCubicMetres(points, TankUnits.Metres(inside), TankUnits.Metres(TapeMillimetres))),
            WallSquareMetres = tank.Shape.WallSquareMetres,
            SectionSquareMetres = tank.Shape.VolumeCubicMetres / TankUnits.Metres(inside),
            DepthMillimetres = inside,
            Strapping = Strapping(tank.Shape, tank.Foot.Z),
            DepthForStatedMillimetres = sketch.Stated is { } stated ? inside * stated / litres + 2 * sketch.Wall : null,
        };
    }

    private static (double DipMillimetres, double Litres, double WettedSquareMetres)[] Strapping(TankShape shape, double foot)
    {
        var (tilted, brim) = (shape.At(Tilt.Level), TankUnits.Millimetres(shape.Highest.Z - foot));
        var step = Steps.FirstOrDefault(s => brim / s <= MostLines, Steps[^1]);
        return [.. Enumerable.Range(1, (int)Math.Ceiling(brim / step) - 1).Select(i => i * step).Append(brim).Select(dip =>
        {
            var level = tilted.Below(foot + TankUnits.Metres(dip));
            return (dip, TankUnits.Litres(level.VolumeCubicMetres), level.WettedSquareMetres);
        })];
    }

    private static string Words(Fault fault) => string.Create(CultureInfo.InvariantCulture, $"{fault.Problem.TrimEnd('.')}; wanted: {fault.Allowed}. {fault.WhatToDo}");
}
