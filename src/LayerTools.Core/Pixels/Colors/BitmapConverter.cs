namespace LayerTools.Pixels.Colors;

/// <summary>Black and white of one bit; the bit stands for black.</summary>
internal sealed class BitmapConverter : ColorConverter
{
    public override int ChannelCount => 1;

    public override void Convert(ReadOnlySpan<float> channels, Span<byte> rgb) => rgb.Slice(0, 3).Fill(channels[0] > 0 ? (byte)0 : byte.MaxValue);
}
