using System.Text;
using System.Text.Unicode;

namespace Tickover.Instruments.Logs.Text;

/// <summary>How bytes are to be read as text, judged by their start.</summary>
/// <param name="Encoding">The encoding.</param>
/// <param name="Name">Its name for people.</param>
internal sealed record TextKind(Encoding Encoding, string Name)
{
    private const double MostControls = 0.02;            // of the characters: a log has none, a damaged one a few
    private const double EveryOther = 0.3;               // of the bytes are zero where plain text is UTF-16

    /// <summary>Judges.</summary>
    /// <param name="head">The first bytes.</param>
    /// <returns>The kind; null where it is no text.</returns>
    public static TextKind? Of(ReadOnlySpan<byte> head)
    {
        if (IsPacked(head))
        {
            return null;
        }

        var kind = ByMark(head) ?? ByZeros(head) ?? ByBytes(head);
        return LooksWritten(kind.Encoding.GetString(head)) ? kind : null;
    }

    /// <summary>Whether the bytes begin like a spreadsheet, a zip or a gzip.</summary>
    /// <param name="head">The first bytes.</param>
    /// <returns>Whether they do.</returns>
    public static bool IsPacked(ReadOnlySpan<byte> head) =>
        head.StartsWith("PK\x03\x04"u8) || head.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]) || head.StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]);

    private static TextKind? ByMark(ReadOnlySpan<byte> head) => head switch
    {
        [0xEF, 0xBB, 0xBF, ..] => new(new UTF8Encoding(false), "UTF-8 with a mark"),
        [0xFF, 0xFE, ..] => new(Encoding.Unicode, "UTF-16"),
        [0xFE, 0xFF, ..] => new(Encoding.BigEndianUnicode, "UTF-16, high byte first"),
        _ => null,
    };

    private static TextKind? ByZeros(ReadOnlySpan<byte> head)
    {
        var (even, odd) = (0, 0);
        for (var i = 0; i < head.Length; i++)
        {
            if (head[i] == 0)
            {
                _ = (i & 1) == 0 ? even++ : odd++;
            }
        }

        if (odd > EveryOther * head.Length)
        {
            return new(Encoding.Unicode, "UTF-16 without a mark");
        }

        return even > EveryOther * head.Length ? new(Encoding.BigEndianUnicode, "UTF-16 without a mark, high byte first") : null;
    }

    private static TextKind ByBytes(ReadOnlySpan<byte> head)
    {
        // The head may end in the middle of a character: leave the last three bytes out of the judgement.
        var whole = head.Length > 3 ? head[..^3] : head;
        if (!whole.ContainsAnyExceptInRange((byte)0, (byte)0x7F))
        {
            return new(new UTF8Encoding(false), "plain ASCII");
        }

        return Utf8.IsValid(whole) || Utf8.IsValid(Trimmed(whole)) ? new(new UTF8Encoding(false), "UTF-8") : new(Encoding.Latin1, "Latin-1");
    }

    private static ReadOnlySpan<byte> Trimmed(ReadOnlySpan<byte> bytes)
    {
        var end = bytes.Length;
        while (end > 0 && bytes.Length - end < 4 && (bytes[end - 1] & 0x80) != 0)
        {
            end--;
        }

        return bytes[..end];
    }

    private static bool LooksWritten(string text)
    {
        var odd = text.Count(c => (char.IsControl(c) && c is not ('\r' or '\n' or '\t' or '\f')) || c == '\uFFFD');
        return odd <= MostControls * text.Length;
    }
}
