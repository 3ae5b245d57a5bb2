using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>
/// The grid and guides resource: version 4, grid 8, count 4, then per guide position 4 (in 1/32 px, signed) and direction 1 (0 = vertical)
/// (PSD File Formats Specification, 'Grid and guides resource format').
/// </summary>
internal static class PsdGuides
{
    private const double StepsPerPixel = 32;
    private const int CountStart = 12;
    private const int GuidesStart = 16;
    private const int GuideLength = 5;
    private const int DirectionStart = 4;

    /// <summary>The guides that are there; a count that promises more than the resource holds is not an error.</summary>
    public static IReadOnlyList<Guide> Read(PsdFileDetail detail)
    {
        if (detail.Find(PsdResource.Guides)?.Data is not MemoryBytes { Bytes.Length: >= GuidesStart } data) return [];
        var count = BinaryPrimitives.ReadUInt32BigEndian(data.Bytes.AsSpan(CountStart));
        var guides = new List<Guide>();
        for (var start = GuidesStart; guides.Count < count && start + GuideLength <= data.Bytes.Length; start += GuideLength)
        {
            guides.Add(new Guide(BinaryPrimitives.ReadInt32BigEndian(data.Bytes.AsSpan(start)) / StepsPerPixel, data.Bytes[start + DirectionStart] == 0));
        }

        return guides;
    }

    /// <summary>The resource with other guides.</summary>
    /// <param name="guides">All guides.</param>
    /// <param name="stored">The resource as it is, whose grid is kept; empty, or too short, for a new one.</param>
    public static byte[] Write(IReadOnlyList<Guide> guides, ReadOnlySpan<byte> stored)
    {
        // The usual grid: every 18 px, in 1/32 px.
        const int Grid = 576;
        var output = new PsdOutput();
        if (stored.Length >= GuidesStart)
        {
            output.Write(stored.Slice(0, CountStart));
        }
        else
        {
            output.WriteInt32(1);
            output.WriteInt32(Grid);
            output.WriteInt32(Grid);
        }

        output.WriteInt32(guides.Count);
        foreach (var guide in guides)
        {
            output.WriteInt32((int)Math.Round(guide.Position * StepsPerPixel));
            output.WriteByte((byte)(guide.IsVertical ? 0 : 1));
        }

        return output.ToArray();
    }
}
