using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>Opacity of the layer without its effects: 1 byte and 3 of filling.</summary>
internal sealed class FillOpacityBlock() : LayerBlock("iOpa")
{
    public override void Load(ReadOnlySpan<byte> data, Layer layer)
    {
        if (data.Length >= 1) layer.FillOpacity = data[0];
    }

    public override bool Says(ReadOnlySpan<byte> data, Layer layer) => data.Length == 0 || data[0] == layer.FillOpacity;

    public override bool IsMissed(Layer layer, PsdHabits habits) => layer.FillOpacity != 255;

    public override byte[] Store(ReadOnlySpan<byte> stored, Layer layer, PsdHabits habits)
    {
        var data = stored.Length >= 1 ? stored.ToArray() : new byte[4];
        data[0] = layer.FillOpacity;
        return data;
    }
}
