using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Packs rows of samples into a channel.</summary>
internal static class PlanePacker
{
    /// <summary>Makes one packed row; tells how many bytes it wrote.</summary>
    private delegate int PackedRowSource(int y, Span<byte> packed);

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

    /// <summary>Packs rows as they come; holds one row and a piece of the packed bytes in memory.</summary>
    /// <param name="role">What the channel is for.</param>
    /// <param name="compression">
    /// How to pack. Where the format cannot do that, the channel gets the nearest that it can: <see cref="Compression.Zip"/> for differences at
    /// 1 bit, and <see cref="Compression.ZipPrediction"/> for PackBits rows whose packed length may not fit into a PSD's table.
    /// </param>
    /// <param name="width">Samples in a row.</param>
    /// <param name="height">Rows.</param>
    /// <param name="bitDepth">1, 8, 16 or 32.</param>
    /// <param name="format">Says how wide the table of packed row lengths is.</param>
    /// <param name="rows">Makes the rows.</param>
    /// <param name="spool">Where the packed bytes are kept.</param>
    public static Plane Pack(PlaneRole role, Compression compression, int width, int height, int bitDepth, FileFormat format, RowSource rows, SpoolFile spool)
    {
        if (width <= 0 || height <= 0) return new Plane(role, (int)Compression.Raw, MemoryBytes.Empty);
        var rowBytes = PlaneRows.GetRowBytes(width, bitDepth);
        compression = Choose(compression, rowBytes, bitDepth, format);
        using var writer = new SpoolWriter(spool);
        var data = compression switch
        {
            Compression.Raw => PackRaw(rowBytes, height, rows, writer),
            Compression.PackBits => PackBitsRuns(rowBytes, height, format, rows, writer),
            Compression.Zip => PackZip(rowBytes, height, bitDepth, predicted: false, rows, writer),
            Compression.ZipPrediction => PackZip(rowBytes, height, bitDepth, predicted: true, rows, writer),
            _ => throw new ArgumentOutOfRangeException(nameof(compression)),
        };
        return new Plane(role, (int)compression, data);
    }

    /// <summary>Packs a channel of 8-bit samples with each row turned end for end, which takes no unpacking.</summary>
    /// <param name="role">What the channel is for.</param>
    /// <param name="format">Says how wide the table of packed row lengths is; the format that the rows come from.</param>
    /// <param name="rows">The channel, none of its rows read yet.</param>
    /// <param name="spool">Where the packed bytes are kept.</param>
    public static Plane PackFlipped(PlaneRole role, FileFormat format, PackBitsRows rows, SpoolFile spool)
    {
        using var writer = new SpoolWriter(spool);
        return new Plane(role, (int)Compression.PackBits, PackTable(rows.Height, rows.LongestPackedRow, format, (_, packed) => rows.ReadFlipped(packed), writer));
    }

    private static Compression Choose(Compression wanted, int rowBytes, int bitDepth, FileFormat format) => wanted switch
    {
        Compression.ZipPrediction when bitDepth == 1 => Compression.Zip,
        Compression.PackBits when format == FileFormat.Psd && PackBits.GetMaxPackedLength(rowBytes) > ushort.MaxValue => bitDepth == 1 ? Compression.Zip : Compression.ZipPrediction,
        _ => wanted,
    };

    private static ByteSource PackRaw(int rowBytes, int height, RowSource rows, SpoolWriter writer)
    {
        for (var y = 0; y < height; y++)
        {
            rows(y, writer.GetSpan(rowBytes).Slice(0, rowBytes));
            writer.Advance(rowBytes);
        }

        return writer.Complete();
    }

    private static ByteSource PackBitsRuns(int rowBytes, int height, FileFormat format, RowSource rows, SpoolWriter writer)
    {
        var row = new byte[rowBytes];
        return PackTable(height, PackBits.GetMaxPackedLength(rowBytes), format, Encode, writer);

        int Encode(int y, Span<byte> packed)
        {
            rows(y, row);
            return PackBits.Encode(row, packed);
        }
    }

    private static ByteSource PackTable(int height, int longest, FileFormat format, PackedRowSource rows, SpoolWriter writer)
    {
        var countBytes = PackBitsRows.GetCountBytes(format);
        var table = new byte[checked(height * countBytes)];
        for (var y = 0; y < height; y++)
        {
            var length = rows(y, writer.GetSpan(longest));
            writer.Advance(length);
            var entry = table.AsSpan(y * countBytes, countBytes);
            if (countBytes == 2) BinaryPrimitives.WriteUInt16BigEndian(entry, (ushort)length);
            else BinaryPrimitives.WriteInt32BigEndian(entry, length);
        }

        return writer.Complete(table);
    }

    private static ByteSource PackZip(int rowBytes, int height, int bitDepth, bool predicted, RowSource rows, SpoolWriter writer)
    {
        var row = new byte[rowBytes];
        var scratch = predicted && bitDepth == 32 ? new byte[rowBytes] : [];
        using (var deflater = Zlib.OpenDeflater(writer))
        {
            for (var y = 0; y < height; y++)
            {
                rows(y, row);
                if (predicted) Prediction.Apply(row, bitDepth, scratch);
                deflater.Write(row, 0, row.Length);
            }
        }

        return writer.Complete();
    }
}
