namespace LayerTools.Pixels.Colors;

/// <summary>Inks by the table of the file's profile to L*a*b*, and that to sRGB.</summary>
internal sealed class ProfileConverter(ProfileTable table) : ColorConverter
{
    public override int ChannelCount => table.ChannelCount;

    public override void Convert(ReadOnlySpan<float> channels, Span<byte> rgb)
    {
        // Profiles count ink, files what is left of white.
        Span<double> inks = stackalloc double[ProfileTable.MostChannels];
        for (var channel = 0; channel < channels.Length; channel++) inks[channel] = 1 - Math.Max(0, Math.Min(1, channels[channel]));
        var (lightness, a, b) = table.FindLab(inks.Slice(0, channels.Length));
        Write(LabColor.ToLight(lightness, a, b), rgb);
    }
}
