using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>The corners in an STL file, three to a triangle.</summary>
internal static class StlReader
{
    private const int Header = 80;
    private const int Start = Header + sizeof(uint);
    private const int Record = 50; // normal and three corners of three floats, two bytes to spare

    public static (List<SpaceVector> Corners, string? Problem) Corners(ReadOnlySpan<byte> bytes)
    {
        // Many binary files begin with the word "solid" too; only the length tells.
        if (bytes.Length >= Start)
        {
            var count = BinaryPrimitives.ReadUInt32LittleEndian(bytes[Header..]);
            if (Start + (long)count * Record == bytes.Length)
            {
                return Binary(bytes, count);
            }
        }

        // Words hold no zero byte: a binary file that is cut short does.
        return bytes.TrimStart("\uFEFF \t\r\n"u8).StartsWith("solid"u8) && !bytes.Contains((byte)0)
            ? Text(Encoding.UTF8.GetString(bytes))
            : ([], "This is no STL mesh: neither the text form, which begins with \"solid\", nor the binary form, whose length does not fit the number of triangles it names. It may be cut short.");
    }

    private static (List<SpaceVector> Corners, string? Problem) Binary(ReadOnlySpan<byte> bytes, uint count)
    {
        if (count > StlMesh.MostTriangles)
        {
            return ([], TooMany);
        }

        var corners = new List<SpaceVector>((int)count * 3);
        for (var i = 0; i < count; i++)
        {
            var record = bytes.Slice(Start + i * Record, Record);
            for (var corner = 1; corner <= 3; corner++)
            {
                corners.Add(new SpaceVector(Single(record, corner * 3), Single(record, corner * 3 + 1), Single(record, corner * 3 + 2)));
            }
        }

        return corners.Exists(c => !double.IsFinite(c.Length)) ? ([], "The mesh holds a corner that is no number.") : (corners, null);
    }

    private static float Single(ReadOnlySpan<byte> record, int index) => BinaryPrimitives.ReadSingleLittleEndian(record[(index * sizeof(float))..]);

    private static (List<SpaceVector> Corners, string? Problem) Text(string text)
    {
        var corners = new List<SpaceVector>();
        var number = 0;
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            number++;
            var words = line.Trim();
            if (words.StartsWith("endloop", StringComparison.OrdinalIgnoreCase) && corners.Count % 3 != 0)
            {
                return ([], StlMesh.Line("A face of the mesh has not three corners", number));
            }

            if (!words.StartsWith("vertex", StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            if (Corner(words["vertex".Length..]) is not { } corner)
            {
                return ([], StlMesh.Line("A corner of the mesh is not three numbers", number));
            }

            corners.Add(corner);
            if (corners.Count > StlMesh.MostTriangles * 3)
            {
                return ([], TooMany);
            }
        }

        return corners.Count % 3 == 0 ? (corners, null) : ([], "The mesh ends in the middle of a face. It may be cut short.");
    }

    private static SpaceVector? Corner(ReadOnlySpan<char> words)
    {
        Span<double> numbers = stackalloc double[3];
        var found = 0;
        foreach (var part in words.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (found == numbers.Length || !double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[found]) || !double.IsFinite(numbers[found]))
            {
                return null;
            }

            found++;
        }

        return found == numbers.Length ? new SpaceVector(numbers[0], numbers[1], numbers[2]) : null;
    }

    private static string TooMany => string.Create(CultureInfo.InvariantCulture, $"The mesh has more than {StlMesh.MostTriangles} triangles. Export it coarser; a millimetre is fine enough.");
}
