namespace LayerTools.Pixels.Png;

/// <summary>Cuts packed rows into IDAT chunks.</summary>
internal sealed class PngDataStream(PngChunks chunks) : WriteOnlyStream
{
    private const int ChunkLength = 1 << 16;
    private readonly byte[] buffer = new byte[ChunkLength];
    private int filled;

    public override void Write(byte[] source, int offset, int count)
    {
        while (count > 0)
        {
            var part = Math.Min(count, ChunkLength - filled);
            Buffer.BlockCopy(source, offset, buffer, filled, part);
            filled += part;
            offset += part;
            count -= part;
            if (filled == ChunkLength) WriteChunk();
        }
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing && filled > 0) WriteChunk();
        base.Dispose(disposing);
    }

    private void WriteChunk()
    {
        chunks.WriteChunk("IDAT", buffer, filled);
        filled = 0;
    }
}
