namespace LayerTools.Pixels.Resampling;

/// <summary>Takes the next row of a channel's samples, big-endian.</summary>
internal delegate void RowOutput(ReadOnlySpan<byte> row);
