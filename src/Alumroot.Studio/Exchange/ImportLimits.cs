using Alumroot.Studio.Journal;
using Alumroot.Studio.Photos;

namespace Alumroot.Studio.Exchange;

/// <summary>What a file from elsewhere may hold at most. Counted while unpacking, since a zip may lie about its sizes.</summary>
internal sealed record ImportLimits(int Files, long EntriesBytes, int Ratio)
{
    public const int LongestLine = 2 * Payload.MostBytes;

    public const long ManifestBytes = 64 << 10;

    public static long PhotoBytes => PhotoFolder.MostBytes;

    /// <summary>The limits of the program: room for a million entries; text packs to a tenth, rarely to a fiftieth.</summary>
    public static ImportLimits Usual { get; } = new(500_000, 4L << 30, 200);
}

/// <summary>More came out of a zip than is allowed.</summary>
internal sealed class TooLargeException(string name) : IOException(name);

/// <summary>Lets through so many bytes and no more.</summary>
internal sealed class BoundedStream(Stream inner, string name, long mostBytes) : Stream
{
    private long _read;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => _read;
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        int read = inner.Read(buffer);
        return (_read += read) <= mostBytes ? read : throw new TooLargeException(name);
    }

    public override void Flush() => inner.Flush();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing) inner.Dispose();
        base.Dispose(disposing);
    }
}
