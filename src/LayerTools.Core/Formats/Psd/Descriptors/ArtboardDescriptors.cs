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
    private static readonly FillColor WhiteColor = new(1, 1, 1);

    public static readonly string[] Keys = ["artb", "artd", "abdd"];

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

    private static Bounds? ReadBounds(Descriptor? rectangle)
    {
        if (rectangle is null) return null;
        if ((rectangle.GetNumber("Left"), rectangle.GetNumber("Top "), rectangle.GetNumber("Rght"), rectangle.GetNumber("Btom")) is not ({ } left, { } top, { } right, { } bottom)) return null;
        const double Farthest = int.MaxValue / 4;
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
