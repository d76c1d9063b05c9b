using System.Diagnostics;
using System.Globalization;
using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Bench.Tanks;

/// <summary>How long 1,000 levels of a mesh of 10,000 triangles take, the making ready for each tilt included: <c>tank</c>.</summary>
/// <remarks>A dented saddle scanned as a fine mesh, and a standing cylinder whose triangles all reach from floor to lid: the worst there is for skipping those not cut.</remarks>
internal static class TankTime
{
    private const int Levels = 1000;
    private const int Tries = 7;

    internal static int Run()
    {
        Console.WriteLine("tank                        triangles   volumes ms   all of it ms   levels of volumes ms   difference from each other");
        Measure("ball-like, fine mesh", Ball(72, 72));
        Measure("standing strips", Strips(2500));
        return 0;
    }

    private static void Measure(string name, TankShape shape)
    {
        var tilt = new Tilt(0.12, -0.07);
        double[] volumes = new double[Levels], whole = new double[Levels];
        var quick = Best(() => Each(shape.At(tilt), (tank, level, i) => volumes[i] = tank.VolumeBelow(level)));
        var full = Best(() => Each(shape.At(tilt), (tank, level, i) => whole[i] = tank.Below(level).VolumeCubicMetres));
        var back = Best(() => Each(shape.At(tilt), (tank, _, i) => tank.Filled(shape.VolumeCubicMetres * (i + 0.5) / Levels)));
        var off = volumes.Zip(whole, (a, b) => Math.Abs(a - b)).Max() / shape.VolumeCubicMetres;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-26}{shape.Facets.Count,11:N0}{quick,13:0.0}{full,15:0.0}{back,23:0.0}{off,29:0.0e+0}"));
    }

    private static void Each(TankAtTilt tank, Action<TankAtTilt, double, int> look)
    {
        for (var i = 0; i < Levels; i++)
        {
            look(tank, tank.Lowest + (tank.Highest - tank.Lowest) * (i + 0.5) / Levels, i);
        }
    }

    private static double Best(Action work)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i < Tries; i++)
        {
            var clock = Stopwatch.StartNew();
            work();
            best = Math.Min(best, clock.Elapsed.TotalMilliseconds);
        }

        return best;
    }

    // A lumpy ball of 0.4 m: 2·n·(m - 1) triangles.
    private static TankShape Ball(int n, int m)
    {
        SpaceVector At(int i, int j)
        {
            var (st, ct) = Math.SinCos(Math.PI * j / m);
            var (sp, cp) = Math.SinCos(2 * Math.PI * (i % n) / n);
            var r = 0.2 * (1 + 0.1 * Math.Sin(5 * Math.PI * j / m) * Math.Cos(3 * 2 * Math.PI * (i % n) / n));
            return new SpaceVector(r * st * cp, r * st * sp, -r * ct);
        }

        var facets = new List<TankFacet>();
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < m; j++)
            {
                if (j > 0)
                {
                    facets.Add(new TankFacet(At(i, j), At(i + 1, j), At(i + 1, j + 1)));
                }

                if (j < m - 1)
                {
                    facets.Add(new TankFacet(At(i, j), At(i + 1, j + 1), At(i, j + 1)));
                }
            }
        }

        return Read(facets);
    }

    private static TankShape Strips(int sides)
    {
        SpaceVector At(int i, double z)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * (i % sides) / sides);
            return new SpaceVector(0.2 * cos, 0.2 * sin, z);
        }

        SpaceVector foot = new(0, 0, 0), lid = new(0, 0, 0.3);
        return Read([.. Enumerable.Range(0, sides).SelectMany(i => new[]
        {
            new TankFacet(At(i, 0), At(i + 1, 0), At(i + 1, 0.3)),
            new TankFacet(At(i, 0), At(i + 1, 0.3), At(i, 0.3)),
            new TankFacet(At(i + 1, 0), At(i, 0), foot),
            new TankFacet(At(i, 0.3), At(i + 1, 0.3), lid),
        })]);
    }

    // As a file would bring it, so that what is measured is what a workshop's mesh costs.
    private static TankShape Read(IEnumerable<TankFacet> facets)
    {
        var text = new System.Text.StringBuilder("solid bench\n");
        foreach (var f in facets)
        {
            foreach (var p in new[] { f.A, f.B, f.C })
            {
                text.Append(CultureInfo.InvariantCulture, $"vertex {p.X:R} {p.Y:R} {p.Z:R}\n");
            }
        }

        var result = StlMesh.Read(text.Append("endsolid").ToString(), 1);
        return result.Shape ?? throw new InvalidOperationException(result.Problem);
    }
}
