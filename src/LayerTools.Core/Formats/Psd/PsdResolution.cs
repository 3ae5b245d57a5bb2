using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>
/// The resolution resource: horizontal 4, unit 2, width unit 2, vertical 4, unit 2, height unit 2. The two resolutions are 16.16 fixed and always stored per
/// inch, whatever unit is shown (PSD File Formats Specification, 'ResolutionInfo structure').
/// </summary>
internal static class PsdResolution
{
    private const double Unit = 65536;
    private const int ResolutionLength = 4;
    private const int VerticalStart = 8;
    private const int FullLength = 16;

    /// <summary>Horizontal pixels per inch; null where the file does not say.</summary>
    public static double? Read(PsdFileDetail detail) =>
        detail.Find(PsdResource.Resolution)?.Data is MemoryBytes { Bytes.Length: >= ResolutionLength } data ? BinaryPrimitives.ReadUInt32BigEndian(data.Bytes) / Unit : null;

    /// <summary>The resource with another horizontal resolution. The vertical one keeps its ratio to it.</summary>
    /// <param name="ppi">Pixels per inch.</param>
    /// <param name="stored">The resource as it is; empty, or too short, for a new one.</param>
    public static byte[] Write(double ppi, ReadOnlySpan<byte> stored)
    {
        // A new resource shows pixels per inch (unit 1) and inches (width and height unit 1).
        var isStored = stored.Length >= FullLength;
        var data = isStored ? stored.ToArray() : [0, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 1, 0, 1];
        var ratio = isStored && BinaryPrimitives.ReadUInt32BigEndian(stored) is var horizontal and > 0 ? BinaryPrimitives.ReadUInt32BigEndian(stored.Slice(VerticalStart)) / (double)horizontal : 1;
        BinaryPrimitives.WriteUInt32BigEndian(data, (uint)Math.Round(ppi * Unit));
        BinaryPrimitives.WriteUInt32BigEndian(data.AsSpan(VerticalStart), (uint)Math.Round(ppi * Unit * ratio));
        return data;
    }
}
