using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>The pieces that a picture is cut into for the web (PSD File Formats Specification, 'Slices resource format').</summary>
internal static class Slices
{
    private const string Section = "slices";
    private const int LastPlainVersion = 6;
    private const int EdgeBytes = 4;
    private static readonly string[] EdgeKeys = ["Top ", "Left", "Btom", "Rght"];

    /// <summary>The resource's bytes for another canvas; as they are where they cannot be read.</summary>
    public static byte[] Scale(byte[] data, CanvasScale scale)
    {
        var scaled = (byte[])data.Clone();
        try
        {
            var input = new DescriptorInput(data, 0, Section);
            if (input.ReadInt32() == LastPlainVersion) ScalePlain(input, scaled, scale);
            // Version 4 of the descriptor, if there is one.
            if (input.Remaining > EdgeBytes) DescriptorReader.Visit(data, input.Position, Section, placed => ScaleEdges(placed, scaled, scale));
            return scaled;
        }
        catch (LayeredFileException)
        {
            return data;
        }
    }

    /// <summary>
    /// top 4, left 4, bottom 4, right 4, name, count 4; for each piece: id 4, group 4, origin 4, layer 4 where the origin is 1, name, type 4, left 4, top 4, right 4, bottom 4,
    /// address, target, message, text in place of a picture, a flag 1, text of the cell, two alignments 8, colour 4. Texts are a count and UTF-16 units.
    /// </summary>
    private static void ScalePlain(DescriptorInput input, byte[] scaled, CanvasScale scale)
    {
        const int FromLayer = 1;
        const int LeastPieceBytes = 60;
        ScaleRectangle(input, scaled, scale, isTopFirst: true);
        input.ReadText();
        for (var count = input.ReadCount(LeastPieceBytes); count > 0; count--)
        {
            input.Skip(8);
            if (input.ReadInt32() == FromLayer) input.Skip(4);
            input.ReadText();
            input.Skip(4);
            ScaleRectangle(input, scaled, scale, isTopFirst: false);
            for (var text = 0; text < 4; text++) input.ReadText();
            input.Skip(1);
            input.ReadText();
            input.Skip(12);
        }
    }

    private static void ScaleRectangle(DescriptorInput input, byte[] scaled, CanvasScale scale, bool isTopFirst)
    {
        for (var i = 0; i < 4; i++)
        {
            Write(scaled, input.Position, input.ReadInt32(), i % 2 == 0 == isTopFirst ? scale.Down : scale.Across);
        }
    }

    private static void ScaleEdges(PlacedDescriptor placed, byte[] scaled, CanvasScale scale)
    {
        for (var i = 0; i < placed.Ends.Count; i++)
        {
            var edge = Array.IndexOf(EdgeKeys, placed.Descriptor.Items[i].Key);
            if (edge >= 0 && placed.Descriptor.Items[i].Value is int value) Write(scaled, placed.Ends[i] - EdgeBytes, value, edge % 2 == 0 ? scale.Down : scale.Across);
        }
    }

    private static void Write(byte[] scaled, int place, int value, double factor) =>
        BinaryPrimitives.WriteInt32BigEndian(scaled.AsSpan(place), (int)Math.Max(int.MinValue, Math.Min(int.MaxValue, Math.Round(value * factor))));
}
