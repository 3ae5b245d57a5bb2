namespace LayerTools.Pixels.Colors;

/// <summary>CIE L*a*b*: L* from 0 to 100 over the whole range; a* and b* in steps of 1 (8 bit) or 1/256 (16 bit) with 0 at the middle, 128 or 32768.</summary>
internal sealed class LabConverter(int bitDepth) : ColorConverter
{
    private const double LightnessUnit = 100;
    private const double Neutral = 128;
    private readonly double unit = bitDepth == 8 ? byte.MaxValue : ushort.MaxValue / 256.0;

    public override int ChannelCount => 3;

    public override void Convert(ReadOnlySpan<float> channels, Span<byte> rgb) =>
        Write(LabColor.ToLight(LightnessUnit * channels[0], (unit * channels[1]) - Neutral, (unit * channels[2]) - Neutral), rgb);
}
