namespace LayerTools.Pixels.Compositing.Sinks;

/// <summary>Takes the rows of a picture as they are drawn, band by band from the top.</summary>
internal interface IRowSink
{
    /// <summary>A band begins.</summary>
    /// <param name="top">Its first row, counted from the top of the drawn area.</param>
    /// <param name="count">Its rows.</param>
    void BeginBand(int top, int count);

    /// <summary>Takes a premultiplied row of the band. Rows come in any order and from several threads at a time. The sink may change it.</summary>
    void Accept(int row, PixelRow pixels);

    /// <summary>All rows of the band were taken.</summary>
    void EndBand();
}
