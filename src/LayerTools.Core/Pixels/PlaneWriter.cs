using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Packs a channel whose rows are handed over one by one, from the top; holds one row and a piece of the packed bytes in memory.</summary>
internal sealed class PlaneWriter : IDisposable
{
    private readonly PlaneRole role;
    private readonly Compression compression;
    private readonly int bitDepth;
    private readonly int countBytes;
    private readonly SpoolWriter writer;
    private Stream? deflater;
    private readonly byte[] table;
    private readonly byte[] row;
    private readonly byte[] scratch;
    private int nextRow;

    /// <param name="role">What the channel is for.</param>
    /// <param name="compression">
    /// How to pack. Where the format cannot do that, the channel gets the nearest that it can: <see cref="Compression.Zip"/> for differences at
    /// 1 bit, and <see cref="Compression.ZipPrediction"/> for PackBits rows whose packed length may not fit into a PSD's table.
    /// </param>
    /// <param name="width">Samples in a row, 1 or more.</param>
    /// <param name="height">Rows, 1 or more.</param>
    /// <param name="bitDepth">1, 8, 16 or 32.</param>
    /// <param name="format">Says how wide the table of packed row lengths is.</param>
    /// <param name="spool">Where the packed bytes are kept.</param>
    public PlaneWriter(PlaneRole role, Compression compression, int width, int height, int bitDepth, FileFormat format, SpoolFile spool)
    {
        var rowBytes = PlaneRows.GetRowBytes(width, bitDepth);
        this.role = role;
        this.bitDepth = bitDepth;
        this.compression = Choose(compression, rowBytes, bitDepth, format);
        countBytes = PackBitsRows.GetCountBytes(format);
        table = this.compression == Compression.PackBits ? new byte[checked(height * countBytes)] : [];
        row = new byte[rowBytes];
        scratch = this.compression == Compression.ZipPrediction && bitDepth == 32 ? new byte[rowBytes] : [];
        writer = new SpoolWriter(spool);
        deflater = this.compression is Compression.Zip or Compression.ZipPrediction ? Zlib.OpenDeflater(writer) : null;
    }

    /// <summary>Packs the next row.</summary>
    /// <param name="samples">Big-endian; at 1 bit padded to whole bytes.</param>
    public void WriteRow(ReadOnlySpan<byte> samples)
    {
        switch (compression)
        {
            case Compression.Raw:
                samples.CopyTo(writer.GetSpan(samples.Length));
                writer.Advance(samples.Length);
                break;
            case Compression.PackBits:
                var length = PackBits.Encode(samples, writer.GetSpan(PackBits.GetMaxPackedLength(samples.Length)));
                writer.Advance(length);
                Note(length);
                break;
            default:
                samples.CopyTo(row);
                if (compression == Compression.ZipPrediction) Prediction.Apply(row, bitDepth, scratch);
                deflater!.Write(row, 0, row.Length);
                break;
        }
    }

    /// <summary>The channel, once all rows were written.</summary>
    public Plane Complete()
    {
        FinishDeflating();
        return new Plane(role, (int)compression, writer.Complete(table));
    }

    public void Dispose()
    {
        FinishDeflating();
        writer.Dispose();
    }

    private void FinishDeflating()
    {
        deflater?.Dispose();
        deflater = null;
    }

    private void Note(int length)
    {
        var entry = table.AsSpan(nextRow++ * countBytes, countBytes);
        if (countBytes == 2) BinaryPrimitives.WriteUInt16BigEndian(entry, (ushort)length);
        else BinaryPrimitives.WriteInt32BigEndian(entry, length);
    }

    private static Compression Choose(Compression wanted, int rowBytes, int bitDepth, FileFormat format) => wanted switch
    {
        Compression.ZipPrediction when bitDepth == 1 => Compression.Zip,
        Compression.PackBits when format == FileFormat.Psd && PackBits.GetMaxPackedLength(rowBytes) > ushort.MaxValue => bitDepth == 1 ? Compression.Zip : Compression.ZipPrediction,
        Compression.Raw or Compression.PackBits or Compression.Zip or Compression.ZipPrediction => wanted,
        _ => throw new ArgumentOutOfRangeException(nameof(wanted)),
    };
}
