using System.Globalization;

namespace Tickover.Physics.Tanks;

/// <summary>Reads tanks drawn or scanned as STL, the plain list of triangles, in its text or its binary form.</summary>
/// <remarks>Form of both: Marshall Burns, <i>Automated Fabrication</i>, 1993, section 6.5 (from memory). STL knows no unit; the caller says which.</remarks>
public static class StlMesh
{
    /// <summary>Most triangles that are taken.</summary>
    public const int MostTriangles = 500_000;

    /// <summary>Reads a mesh and sees to it that it is one closed surface, the right way out.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="unitMetres">Length of its unit, m: 0.001 for millimetres.</param>
    /// <returns>The inside of the tank, or what is wrong with the mesh.</returns>
    public static TankShapeResult Read(ReadOnlySpan<byte> bytes, double unitMetres)
    {
        Precondition.Positive(unitMetres);
        var (corners, problem) = StlReader.Corners(bytes);
        return problem is null ? MeshCheck.Of(corners, unitMetres) : TankShapeResult.Refused(problem);
    }

    /// <summary>Reads a mesh in the text form.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="unitMetres">Length of its unit, m.</param>
    /// <returns>The inside of the tank, or what is wrong with the mesh.</returns>
    public static TankShapeResult Read(string text, double unitMetres)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(System.Text.Encoding.UTF8.GetBytes(text), unitMetres);
    }

    internal static string Line(string what, int number) => string.Create(CultureInfo.InvariantCulture, $"{what} (line {number}).");
}
