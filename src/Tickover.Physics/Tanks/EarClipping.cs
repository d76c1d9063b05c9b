namespace Tickover.Physics.Tanks;

/// <summary>Cuts a plain polygon into triangles, ear by ear (J. O'Rourke, <i>Computational Geometry in C</i>, section 1.4, from memory).</summary>
internal static class EarClipping
{
    /// <summary>The triangles, as numbers of points.</summary>
    /// <param name="points">A polygon that does not cross itself, anticlockwise.</param>
    public static List<(int A, int B, int C)> Triangles(IReadOnlyList<OutlinePoint> points)
    {
        var left = Enumerable.Range(0, points.Count).ToList();
        var triangles = new List<(int A, int B, int C)>();
        while (left.Count > 3)
        {
            var ear = FindEar(points, left);
            triangles.Add(At(left, ear));
            left.RemoveAt(ear);
        }

        triangles.Add((left[0], left[1], left[2]));
        return triangles;
    }

    private static int FindEar(IReadOnlyList<OutlinePoint> points, List<int> left)
    {
        var flattest = 0;
        var least = double.PositiveInfinity;
        for (var i = 0; i < left.Count; i++)
        {
            var (a, b, c) = At(left, i);
            var turn = Outline.Turn(points[a], points[b], points[c]);
            if (turn > 0 && !HoldsOther(points, left, (a, b, c)))
            {
                return i;
            }

            if (Math.Abs(turn) < least)
            {
                (flattest, least) = (i, Math.Abs(turn));
            }
        }

        return flattest; // only corners in a straight line are left: a triangle without area does no harm
    }

    private static bool HoldsOther(IReadOnlyList<OutlinePoint> points, List<int> left, (int A, int B, int C) ear) => left.Exists(p =>
        p != ear.A && p != ear.B && p != ear.C
        && Outline.Turn(points[ear.A], points[ear.B], points[p]) >= 0
        && Outline.Turn(points[ear.B], points[ear.C], points[p]) >= 0
        && Outline.Turn(points[ear.C], points[ear.A], points[p]) >= 0);

    private static (int A, int B, int C) At(List<int> left, int i) => (left[(i + left.Count - 1) % left.Count], left[i], left[(i + 1) % left.Count]);
}
