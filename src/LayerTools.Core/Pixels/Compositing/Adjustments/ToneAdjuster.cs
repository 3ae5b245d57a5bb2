namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>An adjustment that changes each channel alone.</summary>
internal sealed class ToneAdjuster : ColorAdjuster
{
    private readonly ToneTable[] tables;

    /// <summary>One function for each channel.</summary>
    public ToneAdjuster(AdjusterContext context, Func<int, Func<double, double>> functionOf)
    {
        tables = new ToneTable[context.ColorCount];
        for (var channel = 0; channel < tables.Length; channel++) tables[channel] = new ToneTable(context.BitDepth, functionOf(channel));
    }

    /// <summary>The same function for all channels.</summary>
    public ToneAdjuster(AdjusterContext context, Func<double, double> function)
    {
        var table = new ToneTable(context.BitDepth, function);
        tables = Enumerable.Repeat(table, context.ColorCount).ToArray();
    }

    public override void Adjust(PixelRow pixels, int count)
    {
        for (var channel = 0; channel < tables.Length; channel++) tables[channel].Apply(pixels.Colors[channel].AsSpan(0, count));
    }
}
