namespace LayerTools.Model;

/// <summary>A run of bytes in a file on disk.</summary>
internal sealed class FileSlice(SourceFile file, long offset, long length) : ByteSource
{
    public SourceFile File { get; } = file;

    public long Offset { get; } = offset;

    public override long Length { get; } = length;

    public override void Read(long position, Span<byte> buffer, OpenedSources opened)
    {
        if (position < 0 || position + buffer.Length > Length) throw new ArgumentOutOfRangeException(nameof(position));
        opened.Read(File, Offset + position, buffer);
    }
}
