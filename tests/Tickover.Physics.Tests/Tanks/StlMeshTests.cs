using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Physics.Tests.Tanks;

public sealed class StlMeshTests
{
    private static readonly TankShape Box = TankShapes.Box(new SpaceVector(0.6, 0.3, 0.2)).Shape!;

    [Fact]
    public void Text_and_binary_read_alike()
    {
        var (text, binary) = (StlMesh.Read(Text(Box.Facets), 0.001), StlMesh.Read(Binary(Box.Facets), 0.001));

        Assert.Equal(0.036, text.Shape!.VolumeCubicMetres, 1e-9);
        Assert.Equal(0.036, binary.Shape!.VolumeCubicMetres, 1e-9);
        Assert.Null(text.Remark);
    }

    [Fact]
    public void An_open_mesh_is_refused_with_the_place()
    {
        var result = StlMesh.Read(Text(Box.Facets.Skip(1)), 0.001);

        Assert.Null(result.Shape);
        Assert.Contains("The mesh is open: 3 edges have no neighbour", result.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mesh_inside_out_is_turned_and_said()
    {
        var result = StlMesh.Read(Text(Box.Facets.Select(f => f.Turned())), 0.001);

        Assert.Equal(0.036, result.Shape!.VolumeCubicMetres, 1e-9);
        Assert.Contains("inside out", result.Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void One_turned_face_is_refused()
    {
        var result = StlMesh.Read(Text(Box.Facets.Select((f, i) => i == 3 ? f.Turned() : f)), 0.001);

        Assert.Contains("look inwards and some outwards", result.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawing_of_the_sheet_gives_its_inside()
    {
        var inner = TankShapes.Box(new SpaceVector(0.598, 0.298, 0.198)).Shape!.Moved(new SpaceVector(0, 0, 0.001));
        var result = StlMesh.Read(Text([.. Box.Facets, .. inner.Facets.Select(f => f.Turned())]), 0.001);

        Assert.Equal(0.598 * 0.298 * 0.198, result.Shape!.VolumeCubicMetres, 1e-8);
        Assert.Contains("the inside was taken", result.Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_tanks_in_one_mesh_are_refused() => Assert.Contains(
        "2 separate surfaces",
        StlMesh.Read(Text([.. Box.Facets, .. Box.Moved(new SpaceVector(1, 0, 0)).Facets]), 0.001).Problem,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("", "no STL mesh")]
    [InlineData("just words", "no STL mesh")]
    [InlineData("solid x\nendsolid x", "fewer than four")]
    [InlineData("solid x\nvertex 1 2\n", "not three numbers (line 2)")]
    [InlineData("solid x\nvertex 1 2 three\n", "not three numbers (line 2)")]
    [InlineData("solid x\nvertex 1 2 3\nvertex 1 2 3\n", "middle of a face")]
    [InlineData("solid x\nvertex 1 2 3\nvertex 1 2 3\nvertex 1 2 3\nvertex 1 2 3\nendloop\n", "has not three corners (line 6)")]
    public void What_is_no_mesh_says_so(string text, string words) =>
        Assert.Contains(words, StlMesh.Read(text, 0.001).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_flat_mesh_holds_nothing()
    {
        var flat = Box.Facets.Select(f => new TankFacet(Flat(f.A), Flat(f.B), Flat(f.C)));

        Assert.Null(StlMesh.Read(Text(flat), 0.001).Shape);
        Assert.NotNull(StlMesh.Read(Text(flat), 0.001).Problem);

        static SpaceVector Flat(SpaceVector p) => p with { Z = 0 };
    }

    [Fact]
    public void A_binary_file_cut_short_is_refused() => Assert.Contains("cut short", StlMesh.Read(Binary(Box.Facets).AsSpan(0, 300), 0.001).Problem, StringComparison.Ordinal);

    private static string Text(IEnumerable<TankFacet> facets)
    {
        var text = new StringBuilder("solid tank\n");
        foreach (var f in facets)
        {
            text.Append("facet normal 0 0 0\n outer loop\n");
            foreach (var p in new[] { f.A, f.B, f.C })
            {
                text.Append(CultureInfo.InvariantCulture, $"  vertex {1000 * p.X:R} {1000 * p.Y:R} {1000 * p.Z:R}\n");
            }

            text.Append(" endloop\nendfacet\n");
        }

        return text.Append("endsolid tank\n").ToString();
    }

    private static byte[] Binary(IReadOnlyList<TankFacet> facets)
    {
        var bytes = new byte[84 + 50 * facets.Count];
        Encoding.ASCII.GetBytes("solid in name only", bytes);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(80), (uint)facets.Count);
        for (var i = 0; i < facets.Count; i++)
        {
            var f = facets[i];
            double[] numbers = [0, 0, 0, f.A.X, f.A.Y, f.A.Z, f.B.X, f.B.Y, f.B.Z, f.C.X, f.C.Y, f.C.Z];
            for (var k = 0; k < numbers.Length; k++)
            {
                BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(84 + 50 * i + 4 * k), (float)(1000 * numbers[k]));
            }
        }

        return bytes;
    }
}
