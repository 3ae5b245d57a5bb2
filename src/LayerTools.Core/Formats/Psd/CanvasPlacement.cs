using System.Buffers.Binary;

namespace LayerTools.Formats.Psd;

/// <summary>Where the rows of an old canvas lie on a new one.</summary>
internal sealed record CanvasPlacement(int OldWidth, int OldHeight, int NewWidth, int NewHeight, int Right, int Down, int Depth)
{
    /// <summary>Fills a new row with one 8-bit value, told in the row's own depth.</summary>
    public void Fill(Span<byte> row, byte value)
    {
        if (Depth != 32)
        {
            row.Fill(value);
            return;
        }

        // Samples of 32 bit are numbers from 0 to 1.
        var bits = BitConverter.ToInt32(BitConverter.GetBytes(value / 255f), 0);
        for (var i = 0; i < row.Length; i += 4) BinaryPrimitives.WriteInt32BigEndian(row.Slice(i), bits);
    }

    /// <summary>Copies what an old row shares with the new canvas.</summary>
    public void Place(ReadOnlySpan<byte> source, Span<byte> target)
    {
        var (from, to) = (Math.Max(0, Right), (int)Math.Min(NewWidth, (long)OldWidth + Right));
        if (to <= from) return;
        if (Depth == 1)
        {
            for (var x = from; x < to; x++) CopyBit(source, x - Right, target, x);
            return;
        }

        var size = Depth / 8;
        source.Slice((from - Right) * size, (to - from) * size).CopyTo(target.Slice(from * size));
    }

    private static void CopyBit(ReadOnlySpan<byte> source, int from, Span<byte> target, int to)
    {
        var bit = (source[from >> 3] >> (7 - (from & 7))) & 1;
        var mask = (byte)(1 << (7 - (to & 7)));
        target[to >> 3] = (byte)(bit == 1 ? target[to >> 3] | mask : target[to >> 3] & ~mask);
    }
}
