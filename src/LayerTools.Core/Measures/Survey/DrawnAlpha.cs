using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Sinks;

namespace LayerTools.Measures.Survey;

/// <summary>Takes the alpha of a drawn picture, one row after the other from the top.</summary>
/// <param name="area">What is drawn, canvas px; by one thread, a row at a time.</param>
/// <param name="scanner">Where the rows go.</param>
internal sealed class DrawnAlpha(Bounds area, PartScanner scanner) : IRowSink
{
    private readonly byte[] row = new byte[area.Width];

    public void BeginBand(int top, int count)
    {
        // Rows have their place in the whole picture, whatever the band.
    }

    public void Accept(int row, PixelRow pixels)
    {
        for (var x = 0; x < this.row.Length; x++) this.row[x] = (byte)((pixels.Alpha[x] * byte.MaxValue) + 0.5f);
        scanner.Add(area.Top + row, area.Left, this.row);
    }

    public void EndBand()
    {
        // Nothing waits for a band to be complete.
    }
}
