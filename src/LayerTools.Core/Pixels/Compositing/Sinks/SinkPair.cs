namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>Two pictures from one drawing. The first must leave the rows as they are.</summary>
internal sealed class SinkPair(IRowSink first, IRowSink second) : IRowSink
{
    public void BeginBand(int top, int count)
    {
        first.BeginBand(top, count);
        second.BeginBand(top, count);
    }

    public void Accept(int row, PixelRow pixels)
    {
        first.Accept(row, pixels);
        second.Accept(row, pixels);
    }

    public void EndBand()
    {
        first.EndBand();
        second.EndBand();
    }
}
