namespace LayerTools.Model;

/// <summary>Bytes that are held by the place where they are, not in memory, until they are wanted.</summary>
internal abstract class ByteSource
{
    public abstract long Length { get; }

    /// <summary>Reads into <paramref name="buffer"/> from <paramref name="position"/> of this source; the range must lie inside it.</summary>
    /// <param name="position">Bytes from the start of this source.</param>
    /// <param name="buffer">Filled completely.</param>
    /// <param name="opened">The verified handles of files that sources point into.</param>
    public abstract void Read(long position, Span<byte> buffer, OpenedSources opened);

    public byte[] ReadAll(OpenedSources opened)
    {
        var bytes = new byte[checked((int)Length)];
        Read(0, bytes, opened);
        return bytes;
    }
}
