namespace LayerTools.Pixels.Compositing;

/// <summary>The stored pixels of a layer: a channel for each colour, black where one is missing, and alpha, opaque where it is missing.</summary>
internal sealed class LayerPixels(PlaneWindow?[] colors, PlaneWindow? alpha) : PixelSource
{
    private static readonly byte[] Transparent = new byte[Workspace.PieceLength * sizeof(float)];
    private static readonly byte[] Opaque = Enumerable.Repeat(byte.MaxValue, Transparent.Length).ToArray();

    /// <summary>Looks at the stored alpha, since most of a figure's layers are empty or solid over long runs. All bits set is not what a solid 32-bit run looks like; it counts as <see cref="Coverage.Some"/>.</summary>
    public override Coverage GetCoverage(int y, int x, int count)
    {
        if (alpha is null) return Coverage.Full;
        var stored = alpha.GetStored(y, x, count);
        if (stored.SequenceEqual(Transparent.AsSpan(0, stored.Length))) return Coverage.None;
        return stored.SequenceEqual(Opaque.AsSpan(0, stored.Length)) ? Coverage.Full : Coverage.Some;
    }

    public override void ReadColors(PixelRow row, int at, int y, int x, int count)
    {
        for (var channel = 0; channel < colors.Length; channel++)
        {
            var samples = row.Colors[channel].AsSpan(at, count);
            if (colors[channel] is { } window) window.Read(y, x, samples);
            else samples.Clear();
        }
    }

    public override void ReadAlpha(Span<float> samples, int y, int x)
    {
        if (alpha is null) samples.Fill(1f);
        else alpha.Read(y, x, samples);
    }
}
