using System.Buffers.Binary;

namespace LayerTools.Pixels.Colors;

/// <summary>
/// A profile's table from device colours to L*a*b* (ICC.1, 'lut8Type' and 'lut16Type' under 'A2B0', the perceptual one): a curve for each channel, a grid with straight
/// mixing in all directions, a curve for each of L*, a*, b*.
/// </summary>
internal sealed class ProfileTable
{
    public const int MostChannels = 4;
    private const int OutputCount = 3;
    private const int HeadBytes = 48;

    private readonly float[] inputs;
    private readonly float[] grid;
    private readonly float[] outputs;
    private readonly int inputLength;
    private readonly int outputLength;
    private readonly int gridLength;
    private readonly bool isWide;

    private ProfileTable(int channelCount, int gridLength, int inputLength, int outputLength, bool isWide, ReadOnlySpan<byte> data)
    {
        ChannelCount = channelCount;
        this.gridLength = gridLength;
        this.inputLength = inputLength;
        this.outputLength = outputLength;
        this.isWide = isWide;
        var gridSize = OutputCount * (int)Math.Pow(gridLength, channelCount);
        inputs = Read(data, 0, channelCount * inputLength);
        grid = Read(data, inputs.Length, gridSize);
        outputs = Read(data, inputs.Length + grid.Length, OutputCount * outputLength);
    }

    public int ChannelCount { get; }

    /// <summary>The table of a profile; null if there is none of this kind.</summary>
    public static ProfileTable? TryRead(ColorProfile? profile)
    {
        if (profile is not { IsOfInks: true, MeetsInLab: true }) return null;
        // type 4, reserved 4, channels in 1, out 1, grid points 1, filling 1, matrix 9 × 4 (for XYZ only); lut16: entries of the curves in 2, out 2
        var tag = profile.FindTag("A2B0");
        if (tag.Length < HeadBytes + 4) return null;
        var isWide = tag.StartsWith("mft2"u8);
        if (!isWide && !tag.StartsWith("mft1"u8)) return null;
        var (channels, outputs, gridLength) = (tag[8], tag[9], tag[10]);
        if (channels is 0 or > MostChannels || outputs != OutputCount || gridLength < 2) return null;
        var inputLength = isWide ? BinaryPrimitives.ReadUInt16BigEndian(tag.Slice(HeadBytes)) : 256;
        var outputLength = isWide ? BinaryPrimitives.ReadUInt16BigEndian(tag.Slice(HeadBytes + 2)) : 256;
        var data = tag.Slice(isWide ? HeadBytes + 4 : HeadBytes);
        var needed = (channels * (long)inputLength) + (OutputCount * (long)Math.Pow(gridLength, channels)) + (OutputCount * (long)outputLength);
        if (inputLength < 2 || outputLength < 2 || needed * (isWide ? 2 : 1) > data.Length) return null;
        return new ProfileTable(channels, gridLength, inputLength, outputLength, isWide, data);
    }

    /// <summary>L* (0 to 100), a* and b* of a device colour, 0 to 1 each.</summary>
    public (double Lightness, double A, double B) FindLab(ReadOnlySpan<double> device)
    {
        Span<int> lows = stackalloc int[MostChannels];
        Span<double> parts = stackalloc double[MostChannels];
        for (var channel = 0; channel < ChannelCount; channel++)
        {
            var place = FindInCurve(inputs, channel * inputLength, inputLength, device[channel]) * (gridLength - 1);
            lows[channel] = Math.Min((int)place, gridLength - 2);
            parts[channel] = place - lows[channel];
        }

        Span<double> sums = stackalloc double[OutputCount];
        sums.Clear();
        for (var corner = 0; corner < 1 << ChannelCount; corner++)
        {
            var weight = 1.0;
            var index = 0;
            for (var channel = 0; channel < ChannelCount; channel++)
            {
                var isHigh = (corner >> channel) & 1;
                weight *= isHigh == 1 ? parts[channel] : 1 - parts[channel];
                index = (index * gridLength) + lows[channel] + isHigh;
            }

            if (weight == 0) continue;
            for (var output = 0; output < OutputCount; output++) sums[output] += weight * grid[(index * OutputCount) + output];
        }

        for (var output = 0; output < OutputCount; output++) sums[output] = FindInCurve(outputs, output * outputLength, outputLength, sums[output]);
        return ToLab(sums);
    }

    /// <summary>In 16 bit 100 is FF00 and 0 of a* and b* is 8000, in steps of 1/256; in 8 bit 100 is FF and 0 is 80.</summary>
    private (double Lightness, double A, double B) ToLab(ReadOnlySpan<double> sums)
    {
        if (!isWide) return (100 * sums[0], (byte.MaxValue * sums[1]) - 128, (byte.MaxValue * sums[2]) - 128);
        const double Unit = ushort.MaxValue / 256.0;
        return (Unit * sums[0] * 100 / byte.MaxValue, (Unit * sums[1]) - 128, (Unit * sums[2]) - 128);
    }

    private static double FindInCurve(float[] curves, int start, int length, double value)
    {
        var place = Math.Max(0, Math.Min(1, value)) * (length - 1);
        var low = Math.Min((int)place, length - 2);
        return curves[start + low] + ((place - low) * (curves[start + low + 1] - curves[start + low]));
    }

    private float[] Read(ReadOnlySpan<byte> data, int start, int count)
    {
        var values = new float[count];
        for (var i = 0; i < count; i++)
        {
            values[i] = isWide ? BinaryPrimitives.ReadUInt16BigEndian(data.Slice(2 * (start + i))) / (float)ushort.MaxValue : data[start + i] / (float)byte.MaxValue;
        }

        return values;
    }
}
