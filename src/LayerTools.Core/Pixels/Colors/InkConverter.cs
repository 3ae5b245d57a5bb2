namespace LayerTools.Pixels.Colors;

/// <summary>Cyan, magenta, yellow and black by the plain formula: each ink takes its share of one colour of light, black of all. Stored values count from full ink (0) to none (1).</summary>
internal sealed class InkConverter : ColorConverter
{
    public const int InkCount = 4;

    public override int ChannelCount => InkCount;

    public override string Note => "inks are turned to RGB by the plain formula, since the file has no profile that says how they look";

    public override void Convert(ReadOnlySpan<float> channels, Span<byte> rgb)
    {
        for (var place = 0; place < 3; place++) rgb[place] = ToByte(Math.Max(0f, channels[place]) * channels[3]);
    }
}
