namespace LayerTools.Pixels.Compositing;

/// <summary>Some rows of the merged picture as a file stores them: big-endian samples, channel by channel. Reused for the next band.</summary>
internal sealed class MergedBand
{
    private readonly byte[][] channels;

    public MergedBand(int channelCount, int rowBytes, int maxRows)
    {
        RowBytes = rowBytes;
        channels = new byte[channelCount][];
        for (var channel = 0; channel < channelCount; channel++) channels[channel] = new byte[checked(rowBytes * maxRows)];
    }

    /// <summary>Colours, and alpha where it was asked for.</summary>
    public int ChannelCount => channels.Length;

    /// <summary>Bytes of one row of one channel.</summary>
    public int RowBytes { get; }

    /// <summary>The first row, counted from the top of the picture.</summary>
    public int Top { get; internal set; }

    public int RowCount { get; internal set; }

    /// <summary>The rows of a channel, one after the other.</summary>
    public ReadOnlySpan<byte> GetRows(int channel) => channels[channel].AsSpan(0, RowBytes * RowCount);

    internal Span<byte> GetRow(int channel, int row) => channels[channel].AsSpan(RowBytes * (row - Top), RowBytes);
}
