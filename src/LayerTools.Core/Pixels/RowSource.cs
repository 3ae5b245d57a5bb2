namespace LayerTools.Pixels;

/// <summary>Makes one row of samples; rows are asked for from the top, each once.</summary>
/// <param name="y">The row, 0 = topmost.</param>
/// <param name="row">Filled with big-endian samples; at 1 bit padded to whole bytes.</param>
internal delegate void RowSource(int y, Span<byte> row);
