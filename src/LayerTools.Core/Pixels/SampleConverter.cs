using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels;

/// <summary>Brings samples of every depth to 8 bits.</summary>
internal static class SampleConverter
{
    private const int CoarseSteps = 4096;

    /// <summary>The least linear value whose sRGB encoding rounds to each byte (IEC 61966-2-1).</summary>
    private static readonly float[] Thresholds = CreateThresholds();

    /// <summary>The byte for the low end of each of <see cref="CoarseSteps"/> equal ranges, from where few steps lead to the exact one.</summary>
    private static readonly byte[] Coarse = CreateCoarse();

    /// <exception cref="LayeredFileException">The file's colours cannot be shown as RGB.</exception>
    public static void EnsureSupported(LayerFile file, string section)
    {
        if (ColorConverter.CanConvert(file)) return;
        throw new LayeredFileException(LayeredFileErrorKind.NotSupported, file.Path, section, -1,
            FormattableString.Invariant($"Pixels in colour mode {file.ColorMode} with {file.BitDepth} bits cannot be read yet."),
            "Convert the file to RGB with 8, 16 or 32 bits.");
    }

    /// <summary>Converts a row.</summary>
    /// <param name="samples">Big-endian samples.</param>
    /// <param name="bytes">One byte for each sample.</param>
    /// <param name="bitDepth">1, 8, 16 or 32.</param>
    /// <param name="isLight">Whether the samples are colours: at 32 bits these are linear light and are encoded as sRGB. Alpha and masks are not.</param>
    public static void ToBytes(ReadOnlySpan<byte> samples, Span<byte> bytes, int bitDepth, bool isLight)
    {
        switch (bitDepth)
        {
            case 1:
                for (var x = 0; x < bytes.Length; x++) bytes[x] = (samples[x >> 3] & (0x80 >> (x & 7))) != 0 ? byte.MaxValue : (byte)0;
                break;
            case 8:
                samples.CopyTo(bytes);
                break;
            case 16:
                for (var x = 0; x < bytes.Length; x++) bytes[x] = FromWord(BinaryPrimitives.ReadUInt16BigEndian(samples.Slice(2 * x)));
                break;
            case 32 when isLight:
                for (var x = 0; x < bytes.Length; x++) bytes[x] = EncodeLight(ReadSingle(samples.Slice(4 * x)));
                break;
            case 32:
                for (var x = 0; x < bytes.Length; x++) bytes[x] = (byte)((Clamp(ReadSingle(samples.Slice(4 * x))) * 255) + 0.5f);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(bitDepth));
        }
    }

    /// <summary>Puts bytes at one place of each pixel.</summary>
    /// <param name="bytes">One for each pixel.</param>
    /// <param name="pixels">Four bytes a pixel.</param>
    /// <param name="place">0 to 3.</param>
    public static void Spread(ReadOnlySpan<byte> bytes, Span<byte> pixels, int place)
    {
        for (var x = 0; x < bytes.Length; x++) pixels[(4 * x) + place] = bytes[x];
    }

    /// <summary>Puts one byte at one place of each pixel.</summary>
    public static void Spread(byte value, Span<byte> pixels, int place)
    {
        for (var i = place; i < pixels.Length; i += 4) pixels[i] = value;
    }

    /// <summary>v · 255 / 65535, rounded.</summary>
    public static byte FromWord(ushort value) => (byte)((value + 128) / 257);

    /// <summary>Linear light, 0 to 1, as an sRGB byte; what lies outside is cut off and what is no number is 0.</summary>
    public static byte EncodeLight(float linear)
    {
        var clamped = Clamp(linear);
        var code = Coarse[(int)(clamped * CoarseSteps)];
        while (code < 255 && clamped >= Thresholds[code + 1]) code++;
        return code;
    }

    private static float Clamp(float value) => value > 0 ? Math.Min(value, 1) : 0;

    private static float ReadSingle(ReadOnlySpan<byte> bytes)
    {
        var bits = BinaryPrimitives.ReadInt32BigEndian(bytes);
#if NET8_0_OR_GREATER
        return BitConverter.Int32BitsToSingle(bits);
#else
        return System.Runtime.CompilerServices.Unsafe.As<int, float>(ref bits);
#endif
    }

    private static float[] CreateThresholds()
    {
        var thresholds = new float[256];
        for (var code = 1; code < 256; code++) thresholds[code] = (float)Decode((code - 0.5) / 255);
        return thresholds;
    }

    private static byte[] CreateCoarse()
    {
        var coarse = new byte[CoarseSteps + 1];
        var code = 0;
        for (var step = 0; step <= CoarseSteps; step++)
        {
            while (code < 255 && (float)step / CoarseSteps >= Thresholds[code + 1]) code++;
            coarse[step] = (byte)code;
        }

        return coarse;
    }

    private static double Decode(double encoded) => encoded <= 0.04045 ? encoded / 12.92 : Math.Pow((encoded + 0.055) / 1.055, 2.4);
}
