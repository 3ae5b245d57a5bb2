using LayerTools.Pixels.Colors;

namespace LayerTools.Measures.Symmetry;

/// <summary>Differences of colours, remembered, since the same two meet again and again in a drawing.</summary>
internal sealed class ColorPairs
{
    private const int Slots = 1 << 14;

    private readonly ulong[] keys = new ulong[Slots];
    private readonly float[] differences = new float[Slots];

    /// <summary>ΔE00 of two colours.</summary>
    /// <param name="one">R, G, B.</param>
    /// <param name="two">R, G, B.</param>
    public float Measure(ReadOnlySpan<byte> one, ReadOnlySpan<byte> two)
    {
        var (first, second) = (Pack(one), Pack(two));
        if (first == second) return 0;
        var key = ((ulong)first << 24) | second;
        var slot = (int)((key * 0x9E3779B97F4A7C15UL) >> 50);
        if (keys[slot] == key) return differences[slot];
        keys[slot] = key;
        return differences[slot] = (float)Ciede2000.Measure(CieLab.FromSrgb(one[0], one[1], one[2]), CieLab.FromSrgb(two[0], two[1], two[2]));
    }

    private static uint Pack(ReadOnlySpan<byte> color) => ((uint)color[0] << 16) | ((uint)color[1] << 8) | color[2];
}
