namespace Tickover.Records;

/// <summary>Looks at what a JPEG carries beside its picture (ITU-T T.81, annex B: markers and segments).</summary>
internal static class JpegSegments
{
    private const byte Mark = 0xFF;
    private const byte StartOfScan = 0xDA;
    private const byte FirstRestart = 0xD0;
    private const byte EndOfImage = 0xD9;
    private const byte Exif = 0xE1;
    private const byte LastApplication = 0xEF;
    private const byte Comment = 0xFE;
    private const byte IccProfile = 0xE2;
    private const byte Adobe = 0xEE;

    /// <summary>Whether there is anything that could say where, when or with what it was taken.</summary>
    public static bool CarryMore(ReadOnlySpan<byte> jpeg)
    {
        var at = 2;
        while (at + 4 <= jpeg.Length && jpeg[at] == Mark && jpeg[at + 1] != StartOfScan)
        {
            var marker = jpeg[at + 1];
            if (marker is Comment or (>= Exif and <= LastApplication) && marker is not (IccProfile or Adobe))
            {
                return true;
            }

            at += marker is >= FirstRestart and <= EndOfImage ? 2 : 2 + (jpeg[at + 2] << 8) + jpeg[at + 3];
        }

        return false;
    }
}
