using System.Buffers.Binary;

namespace Tickover.Records.Tests.Pictures;

/// <summary>Puts an Exif segment with a way up and a place into a JPEG (Exif 2.32: APP1, TIFF header, IFD0 with 0x0112 and 0x8825, GPS IFD).</summary>
internal static class ExifJpeg
{
    /// <summary>50° 47' 0" north: the bytes looked for afterwards.</summary>
    public static readonly byte[] Latitude = Rationals(50, 47, 0);

    public static byte[] With(byte[] jpeg, int orientation)
    {
        var exif = Segment(orientation);
        return [.. jpeg[..2], .. exif, .. jpeg[2..]];
    }

    private static byte[] Segment(int orientation)
    {
        // Offsets count from the TIFF header: IFD0 at 8 with two entries, GPS IFD at 38 with four, values from 92 on.
        byte[] tiff =
        [
            .. "MM\0*"u8, 0, 0, 0, 8,
            0, 2, .. Entry(0x0112, 3, 1, (uint)orientation << 16), .. Entry(0x8825, 4, 1, 38), 0, 0, 0, 0,
            0, 4, .. Entry(1, 2, 2, (uint)'N' << 24), .. Entry(2, 5, 3, 92), .. Entry(3, 2, 2, (uint)'W' << 24), .. Entry(4, 5, 3, 116), 0, 0, 0, 0,
            .. Latitude, .. Rationals(1, 6, 30),
        ];
        byte[] body = [.. "Exif\0\0"u8, .. tiff];
        return [0xFF, 0xE1, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body];
    }

    private static byte[] Entry(ushort tag, ushort type, uint count, uint value)
    {
        var entry = new byte[12];
        BinaryPrimitives.WriteUInt16BigEndian(entry, tag);
        BinaryPrimitives.WriteUInt16BigEndian(entry.AsSpan(2), type);
        BinaryPrimitives.WriteUInt32BigEndian(entry.AsSpan(4), count);
        BinaryPrimitives.WriteUInt32BigEndian(entry.AsSpan(8), value);
        return entry;
    }

    private static byte[] Rationals(params uint[] values)
    {
        var bytes = new byte[8 * values.Length];
        for (var k = 0; k < values.Length; k++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(8 * k), values[k]);
            BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan((8 * k) + 4), 1);
        }

        return bytes;
    }
}
