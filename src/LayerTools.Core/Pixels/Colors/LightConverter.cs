namespace LayerTools.Pixels.Colors;

/// <summary>RGB, grey, and the grey of a duotone, whose inks are left out. Values of 32 bit are linear light and get the sRGB encoding.</summary>
internal sealed class LightConverter(int channelCount, int bitDepth) : ColorConverter
{
    private readonly bool isLight = bitDepth == 32;

    public override int ChannelCount => channelCount;

    public override void Convert(ReadOnlySpan<float> channels, Span<byte> rgb)
    {
        for (var place = 0; place < 3; place++)
        {
            var value = channels[Math.Min(place, channels.Length - 1)];
            rgb[place] = isLight ? SampleConverter.EncodeLight(value) : ToByte(value);
        }
    }
}
