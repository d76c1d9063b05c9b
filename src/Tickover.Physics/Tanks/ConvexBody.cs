using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>A body that bulges nowhere inwards, cut by planes face by face (after Sutherland and Hodgman 1974, from memory).</summary>
internal sealed class ConvexBody
{
    private readonly double _near;
    private readonly List<ConvexFace> _faces;

    public ConvexBody(TankShape shape)
    {
        _near = Near(shape);
        _faces = [.. shape.Facets.Where(f => f.Area > 0).Select(f => new ConvexFace([f.A, f.B, f.C], false))];
    }

    public ConvexBody(List<ConvexFace> faces, double near) => (_faces, _near) = (faces, near);

    public IReadOnlyList<ConvexFace> Faces => _faces;

    public double Volume
    {
        get
        {
            var at = _faces.Count > 0 ? _faces[0].Corners[0] : default;
            return _faces.SelectMany(f => f.Facets(1)).Sum(f => (f.A - at).Dot((f.B - at).Cross(f.C - at)) / 6);
        }
    }

    /// <summary>Distance below which two places are one for bodies of this size, m.</summary>
    public static double Near(TankShape shape) => 1e-9 * (shape.Highest - shape.Lowest).Length;

    public static bool IsConvex(TankShape shape)
    {
        var near = Near(shape);
        var corners = shape.Facets.SelectMany(f => new[] { f.A, f.B, f.C }).Distinct().ToArray();
        return shape.Facets.All(f => f.Share > 0)
            && Planes(shape).All(p => Array.TrueForAll(corners, c => p.Beyond(c) <= near));
    }

    /// <summary>The planes a body lies between, each once.</summary>
    public static IEnumerable<Facing> Planes(TankShape shape)
    {
        var near = Near(shape);
        return shape.Facets.Select(f => Facing.Of(f)).OfType<Facing>()
            .DistinctBy(p => (Math.Round(p.Normal.X, 9), Math.Round(p.Normal.Y, 9), Math.Round(p.Normal.Z, 9), Math.Round(p.Distance / near / 100)));
    }

    /// <summary>What is left on the inner side of a plane; faces that lie in it are marked.</summary>
    public ConvexBody Inside(Facing plane)
    {
        if (!_faces.Exists(f => f.Corners.Any(c => plane.Beyond(c) < -_near)))
        {
            return new ConvexBody([], _near);
        }

        var kept = new List<ConvexFace>();
        var edge = new List<SpaceVector>();
        foreach (var face in _faces)
        {
            if (face.Corners.All(c => Math.Abs(plane.Beyond(c)) <= _near))
            {
                kept.Add(face with { OnWall = true });
                continue;
            }

            var clipped = Clip(face.Corners, plane, edge);
            if (clipped.Count >= 3)
            {
                kept.Add(face with { Corners = clipped });
            }
        }

        var cap = Cap(edge, plane);
        if (cap.Count >= 3)
        {
            kept.Add(new ConvexFace(cap, true));
        }

        return new ConvexBody(kept, _near);
    }

    private List<SpaceVector> Clip(IReadOnlyList<SpaceVector> corners, Facing plane, List<SpaceVector> edge)
    {
        var kept = new List<SpaceVector>();
        for (var i = 0; i < corners.Count; i++)
        {
            var (p, q) = (corners[i], corners[(i + 1) % corners.Count]);
            var (dp, dq) = (plane.Beyond(p), plane.Beyond(q));
            if (dp <= _near)
            {
                kept.Add(p);
            }

            if ((dp > _near && dq < -_near) || (dp < -_near && dq > _near))
            {
                var cut = p + dp / (dp - dq) * (q - p);
                kept.Add(cut);
                edge.Add(cut);
            }
            else if (dq > _near && Math.Abs(dp) <= _near)
            {
                edge.Add(p);
            }
            else if (dp > _near && Math.Abs(dq) <= _near)
            {
                edge.Add(q);
            }
        }

        return kept;
    }

    private List<SpaceVector> Cap(List<SpaceVector> edge, Facing plane)
    {
        var places = new List<SpaceVector>();
        foreach (var place in edge.Where(e => !places.Exists(p => (p - e).Length <= _near)))
        {
            places.Add(place);
        }

        if (places.Count < 3)
        {
            return [];
        }

        var middle = 1.0 / places.Count * places.Aggregate((a, b) => a + b);
        var first = (places[0] - middle).ToUnit();
        var second = plane.Normal.Cross(first);
        return [.. places.OrderBy(p => Math.Atan2((p - middle).Dot(second), (p - middle).Dot(first)))];
    }
}
