using System.Buffers.Binary;
using System.Text;

namespace LayerTools.Pixels.Png;

/// <summary>Writes the chunks of a PNG: length, type, data, checksum (ISO/IEC 15948, clause 5.3).</summary>
internal sealed class PngChunks(Stream output)
{
    private const int TypeLength = 4;

    private static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    public void WriteSignature() => Write(Signature.ToArray(), Signature.Length);

    public void WriteChunk(string type, byte[] data) => WriteChunk(type, data, data.Length);

    public void WriteChunk(string type, byte[] data, int length)
    {
        var start = new byte[4 + TypeLength];
        BinaryPrimitives.WriteInt32BigEndian(start, length);
        Encoding.ASCII.GetBytes(type, 0, TypeLength, start, 4);
        var checksum = Crc32.Add(Crc32.Add(Crc32.Start, start.AsSpan(4)), data.AsSpan(0, length));
        var end = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(end, ~checksum);
        Write(start, start.Length);
        Write(data, length);
        Write(end, end.Length);
    }

    private void Write(byte[] bytes, int length) => output.Write(bytes, 0, length);
}
