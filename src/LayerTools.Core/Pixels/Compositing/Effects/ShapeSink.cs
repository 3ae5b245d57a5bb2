using LayerTools.Model;
using LayerTools.Pixels.Compositing.Sinks;

namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>Keeps the coverage of what is drawn.</summary>
internal sealed class ShapeSink(Bounds bounds) : IRowSink
{
    public ShapePlane Shape { get; } = new(bounds);

    public void BeginBand(int top, int count)
    {
        // Rows have their place in the whole shape, whatever the band.
    }

    public void Accept(int row, PixelRow pixels)
    {
        var line = Shape.Samples.AsSpan(row * Shape.Width, Shape.Width);
        for (var x = 0; x < line.Length; x++) line[x] = ShapePlane.Encode(pixels.Alpha[x]);
    }

    public void EndBand()
    {
        // Nothing waits for a band to be complete.
    }
}
