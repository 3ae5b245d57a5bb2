using System.Runtime.InteropServices;

namespace LayerTools.Pixels;

/// <summary>Turns a row of samples end for end.</summary>
internal static class Flip
{
    /// <param name="row">Samples of one row, big-endian; at 1 bit padded to whole bytes.</param>
    /// <param name="width">Samples in the row.</param>
    /// <param name="bitDepth">1, 8, 16 or 32.</param>
    public static void Row(Span<byte> row, int width, int bitDepth)
    {
        switch (bitDepth)
        {
            case 1:
                FlipBits(row, width);
                break;
            case 8:
                row.Slice(0, width).Reverse();
                break;
            case 16:
                // Samples move whole, so their byte order does not matter.
                MemoryMarshal.Cast<byte, ushort>(row).Slice(0, width).Reverse();
                break;
            case 32:
                MemoryMarshal.Cast<byte, uint>(row).Slice(0, width).Reverse();
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(bitDepth));
        }
    }

    private static void FlipBits(Span<byte> row, int width)
    {
        row.Reverse();
        foreach (ref var bits in row) bits = ReverseBits(bits);

        // The padding stood behind the last sample and now stands before the first.
        var padding = (8 * row.Length) - width;
        if (padding == 0) return;
        for (var i = 0; i < row.Length; i++)
        {
            var next = i + 1 < row.Length ? row[i + 1] : 0;
            row[i] = (byte)((row[i] << padding) | (next >> (8 - padding)));
        }
    }

    private static byte ReverseBits(byte bits)
    {
        var value = (uint)bits;
        value = ((value & 0xF0) >> 4) | ((value & 0x0F) << 4);
        value = ((value & 0xCC) >> 2) | ((value & 0x33) << 2);
        return (byte)(((value & 0xAA) >> 1) | ((value & 0x55) << 1));
    }
}
