using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Reports.Tanks;

/// <summary>A tank cut through by an upright plane: closed lines, even-odd inside.</summary>
internal static class TankCut
{
    // A plane through corners would meet facets lying in it; so far aside nobody sees it.
    private const double Aside = 1.7e-5;
    private const double Grain = 1e-7;

    /// <summary>Cut from behind: a plane across the car.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="ahead">Where, m ahead.</param>
    /// <returns>Closed lines.</returns>
    internal static IReadOnlyList<IReadOnlyList<SpaceVector>> Across(TankShape tank, double ahead) => Loops(tank, p => p.X - ahead - Aside);

    /// <summary>Cut from the side: a plane along the car.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="left">Where, m to the left.</param>
    /// <returns>Closed lines.</returns>
    internal static IReadOnlyList<IReadOnlyList<SpaceVector>> Along(TankShape tank, double left) => Loops(tank, p => p.Y - left - Aside);

    // Every facet crosses from one side to the other and back, always the same way round: ends meet beginnings.
    private static List<IReadOnlyList<SpaceVector>> Loops(TankShape tank, Func<SpaceVector, double> side)
    {
        var pieces = new Dictionary<(long, long, long), Stack<SpaceVector[]>>();
        foreach (var facet in tank.Facets)
        {
            if (Piece(facet, side) is { } piece)
            {
                var key = Key(piece[0]);
                (pieces.TryGetValue(key, out var known) ? known : pieces[key] = new Stack<SpaceVector[]>()).Push(piece);
            }
        }

        var loops = new List<IReadOnlyList<SpaceVector>>();
        while (pieces.Values.FirstOrDefault(s => s.Count > 0) is { } first)
        {
            var loop = new List<SpaceVector>();
            for (var next = first; next.TryPop(out var piece);)
            {
                loop.Add(piece[0]);
                if (!pieces.TryGetValue(Key(piece[1]), out next!))
                {
                    break;
                }
            }

            loops.Add(loop);
        }

        return [.. loops.Where(l => l.Count > 2)];
    }

    private static SpaceVector[]? Piece(TankFacet facet, Func<SpaceVector, double> side)
    {
        SpaceVector[] corners = [facet.A, facet.B, facet.C];
        SpaceVector? from = null;
        SpaceVector? to = null;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Length]);
            var (da, db) = (side(a), side(b));
            if (da < 0 && db >= 0)
            {
                from = a + da / (da - db) * (b - a);
            }
            else if (da >= 0 && db < 0)
            {
                to = a + da / (da - db) * (b - a);
            }
        }

        return from is { } f && to is { } t ? [f, t] : null;
    }

    private static (long, long, long) Key(SpaceVector p) => ((long)Math.Round(p.X / Grain), (long)Math.Round(p.Y / Grain), (long)Math.Round(p.Z / Grain));
}
