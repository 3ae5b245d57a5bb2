using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Packs rows of samples into a channel.</summary>
internal static class PlanePacker
{
    /// <summary>Packs samples that are in memory.</summary>
    /// <param name="role">What the channel is for.</param>
    /// <param name="compression">How to pack, as far as the format can.</param>
    /// <param name="width">Samples in a row.</param>
    /// <param name="height">Rows.</param>
    /// <param name="bitDepth">1, 8, 16 or 32.</param>
    /// <param name="format">Says how wide the table of packed row lengths is.</param>
    /// <param name="samples">All rows from the top, big-endian; at 1 bit each row is padded to whole bytes.</param>
    /// <param name="spool">Where the packed bytes are kept.</param>
    public static Plane Pack(PlaneRole role, Compression compression, int width, int height, int bitDepth, FileFormat format, ReadOnlySpan<byte> samples, SpoolFile spool)
    {
        var rowBytes = PlaneRows.GetRowBytes(width, bitDepth);
        var copy = samples.Slice(0, checked(rowBytes * height)).ToArray();
        return Pack(role, compression, width, height, bitDepth, format, (y, row) => copy.AsSpan(y * rowBytes, rowBytes).CopyTo(row), spool);
    }

    /// <summary>Packs rows as they are made, see <see cref="PlaneWriter"/>.</summary>
    /// <param name="role">What the channel is for.</param>
    /// <param name="compression">How to pack, as far as the format can.</param>
    /// <param name="width">Samples in a row.</param>
    /// <param name="height">Rows.</param>
    /// <param name="bitDepth">1, 8, 16 or 32.</param>
    /// <param name="format">Says how wide the table of packed row lengths is.</param>
    /// <param name="rows">Makes the rows.</param>
    /// <param name="spool">Where the packed bytes are kept.</param>
    public static Plane Pack(PlaneRole role, Compression compression, int width, int height, int bitDepth, FileFormat format, RowSource rows, SpoolFile spool)
    {
        if (width <= 0 || height <= 0) return new Plane(role, (int)Compression.Raw, MemoryBytes.Empty);
        using var writer = new PlaneWriter(role, compression, width, height, bitDepth, format, spool);
        var row = new byte[PlaneRows.GetRowBytes(width, bitDepth)];
        for (var y = 0; y < height; y++)
        {
            rows(y, row);
            writer.WriteRow(row);
        }

        return writer.Complete();
    }

    /// <summary>Packs a channel of 8-bit samples with each row turned end for end, which takes no unpacking.</summary>
    /// <param name="role">What the channel is for.</param>
    /// <param name="format">Says how wide the table of packed row lengths is; the format that the rows come from.</param>
    /// <param name="rows">The channel, none of its rows read yet.</param>
    /// <param name="spool">Where the packed bytes are kept.</param>
    public static Plane PackFlipped(PlaneRole role, FileFormat format, PackBitsRows rows, SpoolFile spool)
    {
        using var writer = new SpoolWriter(spool);
        var countBytes = PackBitsRows.GetCountBytes(format);
        var table = new byte[checked(rows.Height * countBytes)];
        for (var y = 0; y < rows.Height; y++)
        {
            var length = rows.ReadFlipped(writer.GetSpan(rows.LongestPackedRow));
            writer.Advance(length);
            var entry = table.AsSpan(y * countBytes, countBytes);
            if (countBytes == 2) BinaryPrimitives.WriteUInt16BigEndian(entry, (ushort)length);
            else BinaryPrimitives.WriteInt32BigEndian(entry, length);
        }

        return new Plane(role, (int)Compression.PackBits, writer.Complete(table));
    }
}
