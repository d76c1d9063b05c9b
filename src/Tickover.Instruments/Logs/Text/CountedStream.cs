namespace Tickover.Instruments.Logs.Text;

/// <summary>What was read already, then the rest of a stream, counting as it goes; the stream need not be one that can go back.</summary>
internal sealed class CountedStream(ReadOnlyMemory<byte> start, Stream rest) : Stream
{
    private int _at;

    /// <summary>Bytes handed out.</summary>
    public long Count { get; private set; }

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position { get => Count; set => throw new NotSupportedException(); }

    /// <summary>Reads up to a number of bytes, fewer only at the end.</summary>
    /// <param name="stream">From where.</param>
    /// <param name="most">How many at most.</param>
    /// <returns>The bytes.</returns>
    public static ReadOnlyMemory<byte> Head(Stream stream, int most)
    {
        var head = new byte[most];
        var read = stream.ReadAtLeast(head, most, throwOnEndOfStream: false);
        return head.AsMemory(0, read);
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        var read = Math.Min(buffer.Length, start.Length - _at);
        if (read > 0)
        {
            start.Span.Slice(_at, read).CopyTo(buffer);
            _at += read;
        }
        else
        {
            read = rest.Read(buffer);
        }

        Count += read;
        return read;
    }

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
