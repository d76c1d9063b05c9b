using System.Buffers.Binary;

namespace Tickover.Reports.Fonts;

/// <summary>Reads what setting needs from a TrueType file: which characters it has and how wide they are.</summary>
/// <remarks>Tables head, hhea, hmtx and cmap (formats 4 and 12) by ISO/IEC 14496-22, Open Font Format. The files are our own, so a broken one is a fault of the build.</remarks>
internal sealed class FontFile
{
    private const int DirectoryStart = 12;
    private const int DirectoryEntry = 16;
    private readonly byte[] _bytes;
    private readonly Dictionary<int, double> _advances = [];

    internal FontFile(byte[] bytes)
    {
        _bytes = bytes;
        var unitsPerEm = Short(Table("head") + 18);
        var metrics = Table("hmtx");
        var count = Short(Table("hhea") + 34);
        foreach (var (character, glyph) in Characters())
        {
            // Glyphs beyond the table have the width of its last entry
            _advances[character] = (double)Short(metrics + 4 * Math.Min(glyph, count - 1)) / unitsPerEm;
        }
    }

    /// <summary>The whole file.</summary>
    internal byte[] Bytes => _bytes;

    /// <summary>Whether the font draws a character.</summary>
    internal bool Has(int character) => _advances.ContainsKey(character);

    /// <summary>Width of a character as a part of the type size; 0 where the font lacks it.</summary>
    internal double AdvanceOf(int character) => _advances.GetValueOrDefault(character);

    private IEnumerable<(int Character, int Glyph)> Characters()
    {
        var map = Table("cmap");
        var best = -1;
        for (var i = 0; i < Short(map + 2); i++)
        {
            var at = map + (int)Long(map + 4 + 8 * i + 4);
            if (Short(at) == 12)
            {
                return Groups(at);
            }

            best = Short(at) == 4 ? at : best;
        }

        return best >= 0 ? Segments(best) : throw new InvalidDataException("a font of this library has no Unicode character map");
    }

    private IEnumerable<(int Character, int Glyph)> Groups(int at)
    {
        for (var i = 0; i < Long(at + 12); i++)
        {
            var group = at + 16 + 12 * i;
            var (first, last, glyph) = ((int)Long(group), (int)Long(group + 4), (int)Long(group + 8));
            for (var c = first; c <= last; c++)
            {
                yield return (c, glyph + c - first);
            }
        }
    }

    private IEnumerable<(int Character, int Glyph)> Segments(int at)
    {
        var bytes = Short(at + 6);
        for (var i = 0; i < bytes; i += 2)
        {
            var (last, first) = (Short(at + 14 + i), Short(at + 16 + bytes + i));
            var delta = Short(at + 16 + 2 * bytes + i);
            var offsetAt = at + 16 + 3 * bytes + i;
            var offset = Short(offsetAt);
            for (var c = first; c <= last && c < 0xFFFF; c++)
            {
                var glyph = offset == 0 ? c : Short(offsetAt + offset + 2 * (c - first));
                if (glyph != 0)
                {
                    yield return (c, (glyph + delta) & 0xFFFF);
                }
            }
        }
    }

    private int Table(string tag)
    {
        for (var i = 0; i < Short(4); i++)
        {
            var entry = DirectoryStart + DirectoryEntry * i;
            if (string.Equals(System.Text.Encoding.ASCII.GetString(_bytes, entry, 4), tag, StringComparison.Ordinal))
            {
                return (int)Long(entry + 8);
            }
        }

        throw new InvalidDataException($"a font of this library has no table '{tag}'");
    }

    private int Short(int at) => BinaryPrimitives.ReadUInt16BigEndian(_bytes.AsSpan(at, 2));

    private uint Long(int at) => BinaryPrimitives.ReadUInt32BigEndian(_bytes.AsSpan(at, 4));
}
