namespace LayerTools.Pixels.Colors;

/// <summary>
/// CIE L*a*b*: L* from 0 to 100 over the whole range; a* and b* in steps of 1 with 0 at 128 of 255. In 16 bit the same places of the range mean the same
/// (observed in a picture that was saved in both depths: samples of 16 bit are 257 times those of 8 bit, not 256 times).
/// </summary>
internal sealed class LabConverter : ColorConverter
{
    private const double LightnessUnit = 100;
    private const double Neutral = 128;

    public override int ChannelCount => 3;

    public override void Convert(ReadOnlySpan<float> channels, Span<byte> rgb) =>
        Write(LabColor.ToLight(LightnessUnit * channels[0], (byte.MaxValue * channels[1]) - Neutral, (byte.MaxValue * channels[2]) - Neutral), rgb);
}
