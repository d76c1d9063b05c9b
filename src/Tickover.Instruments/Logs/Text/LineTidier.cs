namespace Tickover.Instruments.Logs.Text;

/// <summary>Hands text on in whole lines that cannot hurt each other: a quotation mark left open ends with its line, a line without an end is cut.</summary>
internal sealed class LineTidier(TextReader inner) : TextReader
{
    /// <summary>Longest line, characters. A thousand columns are some ten thousand.</summary>
    public const int LongestLine = 1 << 17;

    private readonly char[] _work = new char[2 * LongestLine];
    private int _start;
    private int _ready;
    private int _filled;
    private bool _ended;
    private bool _skipping;

    /// <summary>Lines in which quotation marks were taken off because one was left open.</summary>
    public long OpenQuotes { get; private set; }

    /// <summary>Lines cut because they did not end.</summary>
    public long CutLines { get; private set; }

    /// <inheritdoc/>
    public override int Peek() => _start < _ready || Fill() ? _work[_start] : -1;

    /// <inheritdoc/>
    public override int Read() => _start < _ready || Fill() ? _work[_start++] : -1;

    /// <inheritdoc/>
    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    public override int Read(Span<char> buffer)
    {
        if (buffer.IsEmpty || (_start >= _ready && !Fill()))
        {
            return 0;
        }

        var length = Math.Min(buffer.Length, _ready - _start);
        _work.AsSpan(_start, length).CopyTo(buffer);
        _start += length;
        return length;
    }

    /// <inheritdoc/>
    public override int ReadBlock(Span<char> buffer)
    {
        var all = 0;
        while (all < buffer.Length && Read(buffer[all..]) is var read and > 0)
        {
            all += read;
        }

        return all;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }

    private bool Fill()
    {
        while (!(_ended && _start >= _filled))
        {
            _work.AsSpan(_ready, _filled - _ready).CopyTo(_work);
            (_filled, _ready, _start) = (_filled - _ready, 0, 0);
            var read = _ended ? 0 : inner.Read(_work, _filled, LongestLine);
            _ended |= read == 0;
            _filled += read;
            SkipRest();
            _ready = ReadyEnd();
            if (_ready > 0)
            {
                Tidy(_work.AsSpan(0, _ready));
                return true;
            }
        }

        return false;
    }

    /// <summary>Drops what still belongs to a line that was cut.</summary>
    private void SkipRest()
    {
        if (!_skipping)
        {
            return;
        }

        var end = _work.AsSpan(0, _filled).IndexOfAny('\r', '\n');
        var keep = end < 0 ? _filled : end;
        _skipping = end < 0 && !_ended;
        _work.AsSpan(keep, _filled - keep).CopyTo(_work);
        _filled -= keep;
    }

    private int ReadyEnd()
    {
        var end = _work.AsSpan(0, _filled).LastIndexOfAny('\r', '\n');
        if (end >= 0 || _ended)
        {
            return _ended ? _filled : end + 1;
        }

        if (_filled < LongestLine)
        {
            return 0;
        }

        CutLines++;
        _skipping = true;
        return _filled;
    }

    private void Tidy(Span<char> lines)
    {
        if (!lines.Contains('"'))
        {
            return;
        }

        while (!lines.IsEmpty)
        {
            var end = lines.IndexOfAny('\r', '\n');
            var line = end < 0 ? lines : lines[..end];
            if ((line.Count('"') & 1) != 0)
            {
                line.Replace('"', ' ');
                OpenQuotes++;
            }

            lines = end < 0 ? [] : lines[(end + 1)..];
        }
    }
}
