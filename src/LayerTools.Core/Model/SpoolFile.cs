namespace LayerTools.Model;

/// <summary>A store for newly packed bytes: in memory while small, then in a temporary file that vanishes with its last use.</summary>
internal sealed class SpoolFile : IDisposable
{
    private const int MemoryLimit = 4 << 20;
    private readonly object gate = new();
    private FileStream? stream;
    private long end;
    private long inMemory;

    /// <summary>Keeps bytes until the spool is collected.</summary>
    public ByteSource Add(ReadOnlySpan<byte> bytes)
    {
        lock (gate)
        {
            if (inMemory + bytes.Length <= MemoryLimit)
            {
                inMemory += bytes.Length;
                return new MemoryBytes(bytes.ToArray());
            }

            stream ??= Open();
            var slice = new Slice(this, end, bytes.Length);
            stream.Position = end;
#if NET8_0_OR_GREATER
            stream.Write(bytes);
#else
            var copy = bytes.ToArray();
            stream.Write(copy, 0, copy.Length);
#endif
            end += bytes.Length;
            return slice;
        }
    }

    /// <summary>Removes the temporary file at once; without this it vanishes when the spool is collected.</summary>
    public void Dispose()
    {
        lock (gate) stream?.Dispose();
    }

    private static FileStream Open()
    {
        var path = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}.tmp");
        var opened = new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose);
        // Windows removes the file however the process ends. Elsewhere a process that ends would leave it, but an open file needs no name.
        if (Path.DirectorySeparatorChar == '/') File.Delete(path);
        return opened;
    }

    private sealed class Slice(SpoolFile spool, long offset, long length) : ByteSource
    {
        public override long Length { get; } = length;

        public override void Read(long position, Span<byte> buffer, OpenedSources opened)
        {
            if (position < 0 || position + buffer.Length > Length) throw new ArgumentOutOfRangeException(nameof(position));
            lock (spool.gate)
            {
                spool.stream!.Position = offset + position;
                if (!StreamReading.TryFill(spool.stream, buffer)) throw new EndOfStreamException("A temporary file became shorter.");
            }
        }
    }
}
