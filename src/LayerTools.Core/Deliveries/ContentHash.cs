using System.Buffers.Binary;
using System.Security.Cryptography;
using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Hashes numbers and rows one after the other with SHA-256 (FIPS 180-4).</summary>
internal sealed class ContentHash : IDisposable
{
    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly byte[] number = new byte[sizeof(int)];

    /// <summary>Adds a number.</summary>
    public void Add(int value)
    {
        BinaryPrimitives.WriteInt32LittleEndian(number, value);
        hash.AppendData(number);
    }

    /// <summary>Adds bytes.</summary>
    public void Add(byte[] bytes, int start, int count) => hash.AppendData(bytes, start, count);

    /// <summary>Adds bytes and how many there are.</summary>
    public void Add(ByteSource source, OpenedSources opened)
    {
        const int PieceLength = 1 << 16;
        Add((int)Math.Min(source.Length, int.MaxValue));
        var piece = new byte[Math.Min(PieceLength, source.Length)];
        for (var position = 0L; position < source.Length; position += piece.Length)
        {
            var count = (int)Math.Min(piece.Length, source.Length - position);
            source.Read(position, piece.AsSpan(0, count), opened);
            Add(piece, 0, count);
        }
    }

    /// <summary>The hash in hexadecimal digits.</summary>
    public string Complete() => string.Concat(hash.GetHashAndReset().Select(value => value.ToString("x2", System.Globalization.CultureInfo.InvariantCulture)));

    public void Dispose() => hash.Dispose();
}
