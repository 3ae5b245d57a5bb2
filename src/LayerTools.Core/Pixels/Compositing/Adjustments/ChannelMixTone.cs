using LayerTools.Model;
using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>Sums of channels, as the specification describes them.</summary>
internal sealed class ChannelMixTone(ChannelMix adjustment)
{
    private const double Percent = 100;

    public RgbTriple Find(RgbTriple color)
    {
        var rows = adjustment.Rows;
        if (rows.Count > 1) return new RgbTriple(Sum(rows[0], color), Sum(rows[1], color), Sum(rows[2], color));
        var grey = Sum(rows[0], color);
        return new RgbTriple(grey, grey, grey);
    }

    private static double Sum(ChannelMixRow row, RgbTriple color) => ((row.Red * color.Red) + (row.Green * color.Green) + (row.Blue * color.Blue) + row.Constant) / Percent;
}
