using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;

namespace LayerTools.Pixels.Compositing;

/// <summary>Stored samples (1, 8 and 16 bit whole numbers, 32 bit floats, big-endian) to and from floats with 1 as white.</summary>
internal static class Samples
{
    private const float Unit8 = 1f / byte.MaxValue;
    private const float Unit16 = 1f / ushort.MaxValue;
    private const int ExponentBits = 0x7F800000;
    private const int FractionBits = 0x007FFFFF;

    public static void Decode(ReadOnlySpan<byte> stored, int bitDepth, Span<float> samples)
    {
        switch (bitDepth)
        {
            case 1:
                for (var i = 0; i < samples.Length; i++) samples[i] = (stored[i >> 3] >> (7 - (i & 7))) & 1;
                break;
            case 8:
                Decode8(stored, samples);
                break;
            case 16:
                for (var i = 0; i < samples.Length; i++) samples[i] = BinaryPrimitives.ReadUInt16BigEndian(stored.Slice(2 * i)) * Unit16;
                break;
            default:
                var bits = MemoryMarshal.Cast<float, int>(samples);
                for (var i = 0; i < bits.Length; i++) bits[i] = Finite(BinaryPrimitives.ReadInt32BigEndian(stored.Slice(4 * i)));
                break;
        }
    }

    /// <summary>Rounds to the nearest sample; what lies outside 0 to 1 is cut, except in 32 bit, whose range is open.</summary>
    public static void Encode(ReadOnlySpan<float> samples, int bitDepth, Span<byte> stored)
    {
        switch (bitDepth)
        {
            case 8:
                for (var i = 0; i < samples.Length; i++) stored[i] = (byte)((Clamp(samples[i]) * byte.MaxValue) + 0.5f);
                break;
            case 16:
                for (var i = 0; i < samples.Length; i++) BinaryPrimitives.WriteUInt16BigEndian(stored.Slice(2 * i), (ushort)((Clamp(samples[i]) * ushort.MaxValue) + 0.5f));
                break;
            default:
                var bits = MemoryMarshal.Cast<float, int>(samples);
                for (var i = 0; i < bits.Length; i++) BinaryPrimitives.WriteInt32BigEndian(stored.Slice(4 * i), Limit(bits[i]));
                break;
        }
    }

    /// <summary>Infinity and not-a-number, which a file can hold, become 0: they would spread even from a transparent pixel.</summary>
    private static int Finite(int bits) => (bits & ExponentBits) == ExponentBits ? 0 : bits;

    /// <summary>Mixing very large values can go past the largest float; that is what is written then, and 0 for what is no number.</summary>
    private static int Limit(int bits) => (bits & ExponentBits) != ExponentBits ? bits : (bits & FractionBits) != 0 ? 0 : bits - 1;

    private static float Clamp(float sample) => sample > 0 ? Math.Min(sample, 1f) : 0f;

    private static void Decode8(ReadOnlySpan<byte> stored, Span<float> samples)
    {
        var packed = MemoryMarshal.Cast<byte, Vector<byte>>(stored.Slice(0, samples.Length));
        var wide = MemoryMarshal.Cast<float, Vector<float>>(samples);
        for (var i = 0; i < packed.Length; i++)
        {
            Vector.Widen(packed[i], out var low, out var high);
            Vector.Widen(low, out var first, out var second);
            Vector.Widen(high, out var third, out var fourth);
            wide[4 * i] = Vector.ConvertToSingle(Vector.AsVectorInt32(first)) * Unit8;
            wide[(4 * i) + 1] = Vector.ConvertToSingle(Vector.AsVectorInt32(second)) * Unit8;
            wide[(4 * i) + 2] = Vector.ConvertToSingle(Vector.AsVectorInt32(third)) * Unit8;
            wide[(4 * i) + 3] = Vector.ConvertToSingle(Vector.AsVectorInt32(fourth)) * Unit8;
        }

        for (var i = packed.Length * Vector<byte>.Count; i < samples.Length; i++) samples[i] = stored[i] * Unit8;
    }
}
