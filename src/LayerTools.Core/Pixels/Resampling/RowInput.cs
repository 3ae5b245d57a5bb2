namespace LayerTools.Pixels.Resampling;

/// <summary>Fills in the next row of a channel's samples, big-endian.</summary>
internal delegate void RowInput(Span<byte> row);
