using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>Triangles that know their neighbours.</summary>
internal sealed class WeldedMesh
{
    private readonly List<SpaceVector> _places = [];
    private readonly List<(int A, int B, int C)> _faces = [];
    private readonly Dictionary<(int From, int To), int> _edges = [];

    public WeldedMesh(List<SpaceVector> corners, double weldPart)
    {
        var size = new SpaceVector(Span(corners, c => c.X), Span(corners, c => c.Y), Span(corners, c => c.Z)).Length;
        var grid = Math.Max(size * weldPart, double.Epsilon);
        var known = new Dictionary<(long X, long Y, long Z), int>();
        for (var i = 0; i < corners.Count; i += 3)
        {
            var (a, b, c) = (Number(corners[i], grid, known), Number(corners[i + 1], grid, known), Number(corners[i + 2], grid, known));
            if (a != b && b != c && c != a)
            {
                _faces.Add((a, b, c)); // a face welded to a line is no face
            }
        }

        foreach (var edge in Edges())
        {
            _edges[edge] = _edges.GetValueOrDefault(edge) + 1;
        }
    }

    /// <summary>The gravest fault; null for none.</summary>
    public MeshFault? Fault()
    {
        MeshFault? Of(MeshFaultKind kind, Func<(int From, int To), int, int, bool> wrong)
        {
            var bad = _edges.Where(e => wrong(e.Key, e.Value, _edges.GetValueOrDefault((e.Key.To, e.Key.From)))).Select(e => e.Key).ToArray();
            return bad.Length == 0 ? null : new MeshFault(kind, bad.Length, 0.5 * (_places[bad[0].From] + _places[bad[0].To]));
        }

        return Of(MeshFaultKind.Crowded, (edge, there, back) => there + back > 2)
            ?? Of(MeshFaultKind.Turned, (edge, there, back) => there == 2 && back == 0)
            ?? Of(MeshFaultKind.Open, (edge, there, back) => there != back);
    }

    /// <summary>The facets of each surface that hangs together.</summary>
    public IEnumerable<IEnumerable<TankFacet>> Shells()
    {
        var root = Enumerable.Range(0, _places.Count).ToArray();
        int Root(int i)
        {
            while (root[i] != i)
            {
                i = root[i] = root[root[i]];
            }

            return i;
        }

        foreach (var (a, b, c) in _faces)
        {
            root[Root(b)] = Root(a);
            root[Root(c)] = Root(a);
        }

        return _faces.GroupBy(f => Root(f.A)).Select(g => g.Select(f => new TankFacet(_places[f.A], _places[f.B], _places[f.C])));
    }

    private static double Span(List<SpaceVector> corners, Func<SpaceVector, double> of) => corners.Max(of) - corners.Min(of);

    private IEnumerable<(int From, int To)> Edges() => _faces.SelectMany(f => new[] { (f.A, f.B), (f.B, f.C), (f.C, f.A) });

    // Corners that fall on either side of a cell's border are looked for next door as well.
    private int Number(SpaceVector place, double grid, Dictionary<(long X, long Y, long Z), int> known)
    {
        var (x, y, z) = ((long)Math.Floor(place.X / grid), (long)Math.Floor(place.Y / grid), (long)Math.Floor(place.Z / grid));
        for (var i = 0; i < 27; i++)
        {
            if (known.TryGetValue((x + i % 3 - 1, y + i / 3 % 3 - 1, z + i / 9 - 1), out var number) && (_places[number] - place).Length <= grid)
            {
                return number;
            }
        }

        _places.Add(place);
        known[(x, y, z)] = _places.Count - 1;
        return _places.Count - 1;
    }
}
