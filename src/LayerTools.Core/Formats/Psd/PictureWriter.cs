using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Formats.Psd;

/// <summary>Packs a new merged picture as its rows come, with the packed rows in a spool.</summary>
internal sealed class PictureWriter : IDisposable
{
    private readonly Compression compression;
    private readonly FileFormat format;
    private readonly SpoolWriter[] channels;
    private readonly List<int>[] packedLengths;
    private readonly int rowBytes;

    /// <param name="header">The header the file will have.</param>
    /// <param name="wanted">Raw or PackBits; Raw is taken where a packed row might not fit its length.</param>
    /// <param name="spool">Where packed rows are kept.</param>
    public PictureWriter(PsdHeader header, Compression wanted, SpoolFile spool)
    {
        format = header.Format;
        rowBytes = PlaneRows.GetRowBytes(header.Width, header.Depth);
        compression = wanted == Compression.PackBits && !header.IsPsb && PackBits.GetMaxPackedLength(rowBytes) > ushort.MaxValue ? Compression.Raw : wanted;
        channels = [.. Enumerable.Range(0, header.Channels).Select(_ => new SpoolWriter(spool))];
        packedLengths = [.. channels.Select(_ => new List<int>(header.Height))];
    }

    public void WriteRow(int channel, ReadOnlySpan<byte> samples)
    {
        var writer = channels[channel];
        var room = writer.GetSpan(compression == Compression.Raw ? rowBytes : PackBits.GetMaxPackedLength(rowBytes));
        var length = rowBytes;
        if (compression == Compression.Raw) samples.CopyTo(room);
        else length = PackBits.Encode(samples, room);
        writer.Advance(length);
        packedLengths[channel].Add(length);
    }

    /// <summary>The section: compression, the packed lengths of all rows, then the channels one after the other.</summary>
    public IReadOnlyList<ByteSource> Complete()
    {
        var start = new PsdOutput();
        start.WriteUInt16((ushort)compression);
        foreach (var length in compression == Compression.Raw ? [] : packedLengths.SelectMany(lengths => lengths))
        {
            if (format == FileFormat.Psb) start.WriteInt32(length);
            else start.WriteUInt16((ushort)length);
        }

        return [new MemoryBytes(start.ToArray()), .. channels.Select(channel => channel.Complete())];
    }

    public void Dispose()
    {
        foreach (var channel in channels) channel.Dispose();
    }
}
