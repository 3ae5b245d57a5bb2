using LayerTools.Model;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>What is said about a part in words.</summary>
internal static class CellWords
{
    public static string Name(Layer part) => part.Name.Length == 0 ? "(no name)" : SafeText.Clean(part.Name);

    public static string Path(Layer part) => SafeText.Clean(part.LayerPath);

    public static string Size(Layer part, PartFit? fit, bool isUnreadable)
    {
        if (fit is null) return "0 \u00D7 0 px";
        var size = FormattableString.Invariant($"{part.Width} \u00D7 {part.Height} px");
        return isUnreadable ? $"{size} \u00B7 cannot be read" : $"{size} \u00B7 at {fit.Percent}";
    }

    /// <summary>Why there is nothing to draw: shapes and texts may be kept as data only.</summary>
    public static string Absence(Layer part) => part.Kind == LayerKind.Pixel ? "empty" : "no pixels stored";

    /// <summary>Mark, kind and state, for example 'green mark · text · hidden'.</summary>
    public static string State(Layer part) => string.Join(" \u00B7 ",
        new[] { DescribeMark(part.Mark), DescribeKind(part.Kind), DescribeVisibility(part), DescribeMask(part) }.Where(words => words.Length > 0));

    public static string Describe(LayerFile file, IReadOnlyList<Layer> parts, int partsInFile)
    {
        var count = parts.Count == partsInFile ? FormattableString.Invariant($"{parts.Count}") : FormattableString.Invariant($"{parts.Count} of {partsInFile}");
        var facts = new List<string>
        {
            FormattableString.Invariant($"{file.Width} \u00D7 {file.Height} px canvas"),
            partsInFile == 1 ? $"{count} part" : $"{count} parts",
        };
        AddCount(facts, parts.Count(part => !part.EffectivelyVisible), "hidden");
        AddCount(facts, parts.Count(part => part.Kind == LayerKind.Pixel && part.Bounds.IsEmpty), "empty");
        AddCount(facts, parts.Count(part => part.Kind != LayerKind.Pixel && part.Bounds.IsEmpty), "without stored pixels");
        return string.Join(" \u00B7 ", facts);
    }

    public static Rgb? GetColor(Mark mark) => mark switch
    {
        Mark.Red => Rgb.FromNumber(0xd04b45),
        Mark.Orange => Rgb.FromNumber(0xe08a3c),
        Mark.Yellow => Rgb.FromNumber(0xe3c64a),
        Mark.Green => Rgb.FromNumber(0x5aa564),
        Mark.Blue => Rgb.FromNumber(0x4a7fc1),
        Mark.Violet => Rgb.FromNumber(0x8d6bb5),
        Mark.Gray => Rgb.FromNumber(0x8b8b8b),
        _ => null,
    };

    private static void AddCount(List<string> facts, int count, string state)
    {
        if (count > 0) facts.Add(FormattableString.Invariant($"{count} {state}"));
    }

    private static string DescribeMark(Mark mark) => mark switch
    {
        Mark.None => "no mark",
        >= Mark.Red and <= Mark.Gray => $"{mark.ToString().ToLowerInvariant()} mark",
        _ => FormattableString.Invariant($"mark {(int)mark}"),
    };

    private static string DescribeKind(LayerKind kind) => kind is LayerKind.Pixel ? string.Empty : kind.ToString().ToLowerInvariant();

    private static string DescribeVisibility(Layer part) => !part.Visible ? "hidden" : part.EffectivelyVisible ? string.Empty : "in a hidden group";

    /// <summary>A vector mask shows only where the file stores it as samples too; a shape's pixels are cut out by its path already.</summary>
    private static string DescribeMask(Layer part)
    {
        var isCut = part.Kind == LayerKind.Shape || (part.Mask is { IsRendered: true } && part.FindPlane(PlaneRole.UserMask) is not null);
        return (part.Detail.Features & LayerFeatures.VectorMask) == 0 || isCut ? string.Empty : "vector mask not drawn";
    }
}
