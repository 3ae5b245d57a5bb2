using System.Buffers.Binary;
using System.Text;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Reads the sheet of a group from one of the blocks 'artb', 'artd' and 'abdd', which hold a descriptor.</summary>
internal static class ArtboardDescriptors
{
    private const int White = 1;
    private const int Black = 2;
    private const int Transparent = 3;
    private const double Farthest = int.MaxValue / 4;
    private static readonly string[] EdgeKeys = ["Left", "Top ", "Rght", "Btom"];
    private static readonly FillColor WhiteColor = new(1, 1, 1);

    public static string[] Keys { get; } = ["artb", "artd", "abdd"];

    /// <summary>The sheet; null where there is none, or none that can be understood.</summary>
    public static Artboard? Read(PsdRecord record)
    {
        if (Array.Find(Keys, key => !record.GetData(key).IsEmpty) is not { } found) return null;
        try
        {
            var descriptor = DescriptorReader.ReadVersioned(record.GetData(found).ToArray(), 0, $"block '{found}'");
            return ReadBounds(descriptor.GetDescriptor("artboardRect")) is { } bounds ? new Artboard(bounds, ReadBackground(descriptor)) : null;
        }
        catch (LayeredFileException)
        {
            return null;
        }
    }

    /// <summary>The block's bytes with the sheet somewhere else; as they are where they hold no sheet that is understood.</summary>
    public static byte[] Map(ReadOnlySpan<byte> data, Func<Bounds, Bounds> map)
    {
        var mapped = data.ToArray();
        var rectangle = data.IndexOf("artboardRect"u8);
        if (rectangle < 0 || FindEdges(data, rectangle) is not { } edges) return mapped;
        var old = Array.ConvertAll(edges, edge => BitConverter.Int64BitsToDouble(BinaryPrimitives.ReadInt64BigEndian(mapped.AsSpan(edge))));
        if (!Array.TrueForAll(old, value => Math.Abs(value) <= Farthest)) return mapped;
        var bounds = map(new Bounds((int)Math.Round(old[0]), (int)Math.Round(old[1]), (int)Math.Round(old[2]), (int)Math.Round(old[3])));
        int[] values = [bounds.Left, bounds.Top, bounds.Right, bounds.Bottom];
        for (var i = 0; i < edges.Length; i++) BinaryPrimitives.WriteInt64BigEndian(mapped.AsSpan(edges[i]), BitConverter.DoubleToInt64Bits(values[i]));
        return mapped;
    }

    /// <summary>Where the numbers of left, top, right and bottom stand: right after their key and the type 'doub'.</summary>
    private static int[]? FindEdges(ReadOnlySpan<byte> data, int start)
    {
        var edges = new int[EdgeKeys.Length];
        for (var i = 0; i < edges.Length; i++)
        {
            var at = data.Slice(start).IndexOf([.. Encoding.ASCII.GetBytes(EdgeKeys[i] + "doub")]);
            if (at < 0 || start + at + 16 > data.Length) return null;
            edges[i] = start + at + 8;
        }

        return edges;
    }

    private static Bounds? ReadBounds(Descriptor? rectangle)
    {
        if (rectangle is null) return null;
        if ((rectangle.GetNumber("Left"), rectangle.GetNumber("Top "), rectangle.GetNumber("Rght"), rectangle.GetNumber("Btom")) is not ({ } left, { } top, { } right, { } bottom)) return null;
        if (new[] { left, top, right, bottom }.Any(value => Math.Abs(value) > Farthest)) return null;
        return new Bounds((int)Math.Round(left), (int)Math.Round(top), (int)Math.Round(right), (int)Math.Round(bottom));
    }

    /// <summary>Files that do not say what lies on the sheet are older than the choice, when all sheets were white (from memory).</summary>
    private static FillColor? ReadBackground(Descriptor descriptor) => (int)(descriptor.GetNumber("artboardBackgroundType") ?? White) switch
    {
        White => WhiteColor,
        Black => new FillColor(0, 0, 0),
        Transparent => null,
        _ => DescriptorColors.Read(descriptor.GetDescriptor("Clr ")) ?? WhiteColor,
    };
}
