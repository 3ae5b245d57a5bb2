using System.Buffers.Binary;
using System.Text;

namespace LayerTools.Pixels.Png;

/// <summary>Writes a PNG (ISO/IEC 15948) of 8-bit RGBA, row by row, so that memory goes with the length of a row.</summary>
internal sealed class PngWriter : IDisposable
{
    private const double MetresPerInch = 0.0254;
    private readonly PngChunks chunks;
    private readonly PngDataStream data;
    private readonly Stream deflater;
    private readonly PngRowFilter filter;
    private int rowsLeft;
    private bool completed;

    /// <summary>Writes all that stands before the rows.</summary>
    /// <param name="output">Where the PNG goes; stays open.</param>
    /// <param name="width">Columns, px, at least 1.</param>
    /// <param name="height">Rows, px, at least 1.</param>
    /// <param name="ppi">Resolution, pixels per inch, or null.</param>
    /// <param name="profile">The ICC profile that the colours are meant by, or null.</param>
    public PngWriter(Stream output, int width, int height, double? ppi = null, byte[]? profile = null)
    {
        if (width < 1) throw new ArgumentOutOfRangeException(nameof(width));
        if (height < 1) throw new ArgumentOutOfRangeException(nameof(height));
        chunks = new PngChunks(output);
        chunks.WriteSignature();
        chunks.WriteChunk("IHDR", CreateHeader(width, height));
        if (profile is not null) chunks.WriteChunk("iCCP", CreateProfile(profile));
        if (ppi is { } resolution) chunks.WriteChunk("pHYs", CreateResolution(resolution));
        data = new PngDataStream(chunks);
        deflater = Zlib.OpenFastDeflater(data);
        filter = new PngRowFilter(checked(4 * width));
        rowsLeft = height;
    }

    /// <summary>Writes the next row.</summary>
    /// <param name="pixels">R, G, B, A for each pixel, not premultiplied.</param>
    public void WriteRow(ReadOnlySpan<byte> pixels)
    {
        if (rowsLeft == 0) throw new InvalidOperationException("All rows were written.");
        rowsLeft--;
        deflater.Write(filter.Filter(pixels), 0, filter.FilteredLength);
    }

    /// <summary>Writes what stands behind the rows.</summary>
    public void Complete()
    {
        if (rowsLeft > 0) throw new InvalidOperationException("Rows are missing.");
        completed = true;
        deflater.Dispose();
        data.Dispose();
        chunks.WriteChunk("IEND", []);
    }

    /// <summary>Frees what packs the rows; a picture that is not complete stays so.</summary>
    public void Dispose()
    {
        if (!completed) deflater.Dispose();
    }

    private static byte[] CreateHeader(int width, int height)
    {
        // width 4, height 4, bits a sample, colour type (6 = RGBA), then deflate, the one filter method, not interlaced
        const byte Rgba = 6;
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        header[8] = 8;
        header[9] = Rgba;
        return header;
    }

    private static byte[] CreateProfile(byte[] profile)
    {
        // a name, ended by 0; deflate; the packed profile
        byte[] start = [.. Encoding.ASCII.GetBytes("ICC profile"), 0, 0];
        return [.. start, .. Zlib.Deflate(profile)];
    }

    private static byte[] CreateResolution(double ppi)
    {
        // pixels across and down for each unit; 1 = metre
        var perMetre = (uint)Math.Round(Math.Min(Math.Max(ppi / MetresPerInch, 1), int.MaxValue));
        var resolution = new byte[9];
        BinaryPrimitives.WriteUInt32BigEndian(resolution, perMetre);
        BinaryPrimitives.WriteUInt32BigEndian(resolution.AsSpan(4), perMetre);
        resolution[8] = 1;
        return resolution;
    }
}
