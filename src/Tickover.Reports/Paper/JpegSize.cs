using System.Buffers.Binary;

namespace Tickover.Reports.Paper;

/// <summary>Reads the size of a JPEG from its frame header, ITU-T T.81 annex B.</summary>
internal static class JpegSize
{
    private const byte Escape = 0xFF;

    /// <summary>Width and height in pixels; null where the bytes are no whole JPEG header.</summary>
    internal static (int Width, int Height)? Read(ReadOnlySpan<byte> file)
    {
        if (file.Length < 4 || file[0] != Escape || file[1] != 0xD8)
        {
            return null;
        }

        var at = 2;
        while (at + 9 < file.Length && file[at] == Escape)
        {
            var marker = file[at + 1];
            if (IsFrame(marker))
            {
                var (height, width) = (BinaryPrimitives.ReadUInt16BigEndian(file[(at + 5)..]), BinaryPrimitives.ReadUInt16BigEndian(file[(at + 7)..]));
                return width > 0 && height > 0 ? (width, height) : null;
            }

            // A fill byte may stand before any marker
            at += marker == Escape ? 1 : 2 + BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
        }

        return null;
    }

    // SOF0 to SOF15 without DHT, JPG and DAC
    private static bool IsFrame(byte marker) => marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC);
}
