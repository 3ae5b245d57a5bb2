using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>The rows of one channel, unpacked one after the other from the top. Memory goes with the length of a row, not with the channel's size.</summary>
internal abstract class PlaneRows : IDisposable
{
    private int nextRow;

    protected PlaneRows(int width, int height, int bitDepth)
    {
        Width = width;
        Height = height;
        BitDepth = bitDepth;
        RowBytes = GetRowBytes(width, bitDepth);
    }

    /// <summary>Samples in a row.</summary>
    public int Width { get; }

    public int Height { get; }

    /// <summary>1, 8, 16 or 32.</summary>
    public int BitDepth { get; }

    /// <summary>Bytes of an unpacked row; at 1 bit rows are padded to whole bytes.</summary>
    public int RowBytes { get; }

    public static int GetRowBytes(int width, int bitDepth) => checked((int)((((long)width * bitDepth) + 7) / 8));

    /// <summary>Opens a channel.</summary>
    /// <param name="plane">The channel.</param>
    /// <param name="bounds">Its rectangle.</param>
    /// <param name="bitDepth">1, 8, 16 or 32.</param>
    /// <param name="format">Says how wide the table of packed row lengths is.</param>
    /// <param name="blank">What a sample is where the file stores none: 0, or 255 for the format's full value.</param>
    /// <param name="opened">The operation's open files.</param>
    /// <param name="place">For error messages.</param>
    /// <exception cref="LayeredFileException">The packed bytes cannot hold the channel.</exception>
    public static PlaneRows Open(Plane plane, Bounds bounds, int bitDepth, FileFormat format, byte blank, OpenedSources opened, PlanePlace place)
    {
        if (bitDepth is not (1 or 8 or 16 or 32)) throw place.Damaged(0, FormattableString.Invariant($"Samples of {bitDepth} bits do not exist."));
        if (bounds.IsEmpty) return new BlankRows(Math.Max(bounds.Width, 0), Math.Max(bounds.Height, 0), bitDepth, blank);
        if ((long)bounds.Right - bounds.Left > int.MaxValue / 32 || (long)bounds.Bottom - bounds.Top > int.MaxValue / 32)
        {
            throw place.Damaged(0, "The channel's rectangle is larger than the format allows.");
        }

        if (!plane.HasCompressionWord || plane.Data.Length == 0) return new BlankRows(bounds.Width, bounds.Height, bitDepth, blank);
        var compression = plane.ReadCompressionWord(opened);
        return (Compression)compression switch
        {
            Compression.Raw => new RawRows(plane.Data, bounds.Width, bounds.Height, bitDepth, opened, place),
            Compression.PackBits => new PackBitsRows(plane.Data, bounds.Width, bounds.Height, bitDepth, format, opened, place),
            Compression.Zip => new ZipRows(plane.Data, bounds.Width, bounds.Height, bitDepth, predicted: false, opened, place),
            Compression.ZipPrediction => new ZipRows(plane.Data, bounds.Width, bounds.Height, bitDepth, predicted: true, opened, place),
            _ => throw place.Damaged(0, FormattableString.Invariant($"The channel says compression {compression}, which does not exist.")),
        };
    }

    /// <summary>Unpacks the next row.</summary>
    /// <param name="samples">Exactly <see cref="RowBytes"/> bytes; samples are big-endian.</param>
    public void ReadRow(Span<byte> samples)
    {
        if (samples.Length != RowBytes) throw new ArgumentException("The span does not hold one row.", nameof(samples));
        if (nextRow >= Height) throw new InvalidOperationException("All rows were read.");
        ReadNext(samples);
        nextRow++;
    }

    /// <summary>Passes over rows.</summary>
    public void SkipRows(int count)
    {
        if (count < 0 || count > Height - nextRow) throw new ArgumentOutOfRangeException(nameof(count));
        if (count == 0) return;
        SkipNext(nextRow, count);
        nextRow += count;
    }

    public abstract void Dispose();

    protected int NextRow => nextRow;

    /// <summary>Counts a row as read; its number.</summary>
    protected int TakeRow() => nextRow < Height ? nextRow++ : throw new InvalidOperationException("All rows were read.");

    protected abstract void ReadNext(Span<byte> samples);

    protected abstract void SkipNext(int first, int count);

    /// <summary>Rows of a channel that stores nothing.</summary>
    private sealed class BlankRows(int width, int height, int bitDepth, byte blank) : PlaneRows(width, height, bitDepth)
    {
        private const int OneAsFloat = 0x3F800000;

        public override void Dispose()
        {
        }

        protected override void ReadNext(Span<byte> samples)
        {
            if (blank == 0 || BitDepth != 32)
            {
                samples.Fill(blank);
                return;
            }

            for (var i = 0; i < samples.Length; i += 4) BinaryPrimitives.WriteInt32BigEndian(samples.Slice(i), OneAsFloat);
        }

        protected override void SkipNext(int first, int count)
        {
        }
    }
}
