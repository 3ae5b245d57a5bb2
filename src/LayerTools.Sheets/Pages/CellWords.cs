using LayerTools.Model;
using LayerTools.Sheets.Parts;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>What is said about a part in words.</summary>
internal static class CellWords
{
    public static string Name(Layer part) => part.Name.Length == 0 ? "(no name)" : SafeText.Clean(part.Name);

    public static string Path(Layer part) => SafeText.Clean(part.LayerPath);

    /// <summary>Why there is nothing to draw: shapes and texts may be kept as data only.</summary>
    public static string Absence(Layer part) => part.Kind switch
    {
        LayerKind.Pixel => "empty",
        LayerKind.Group => "empty group",
        _ => "no pixels stored",
    };

    /// <summary>Mark, kind, what is not plain, and state, for example 'green mark · text · multiply · opacity 80 % · hidden'.</summary>
    public static string State(Layer part) => string.Join(" \u00B7 ",
        new[] { DescribeMark(part.Mark), DescribeKind(part.Kind), DescribeBlending(part), DescribeOpacity(part), part.Clipped ? "clipped" : string.Empty, DescribeVisibility(part), DescribeMask(part) }.Where(words => words.Length > 0));

    /// <summary>'5000 × 6000 px canvas'.</summary>
    public static string Canvas(LayerFile file) => FormattableString.Invariant($"{file.Width} \u00D7 {file.Height} px canvas");

    /// <summary>'62 parts' of a file or group, with how many are done where the file has marks.</summary>
    public static string Count(LayerFile file, IEnumerable<Layer> layers)
    {
        var progress = new ProgressReader(file);
        var parts = SheetParts.Select(layers);
        return Count(parts, parts.Count, [.. parts.Select(progress.Read)]);
    }

    /// <summary>'12 of 62 parts · 4 done · 1 hidden'.</summary>
    /// <param name="parts">The parts that are shown.</param>
    /// <param name="partsInFile">How many the file has.</param>
    /// <param name="progress">How far each is.</param>
    public static string Count(IReadOnlyList<Layer> parts, int partsInFile, IReadOnlyList<PartProgress> progress)
    {
        var count = parts.Count == partsInFile ? FormattableString.Invariant($"{parts.Count}") : FormattableString.Invariant($"{parts.Count} of {partsInFile}");
        var facts = new List<string> { partsInFile == 1 ? $"{count} part" : $"{count} parts" };
        AddCount(facts, progress.Count(state => state == PartProgress.Done), "done");
        AddCount(facts, progress.Count(state => state == PartProgress.Open), "open");
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

    private static string DescribeKind(LayerKind kind) => kind is LayerKind.Pixel or LayerKind.Group ? string.Empty : kind.ToString().ToLowerInvariant();

    private static string DescribeOpacity(Layer part) => part.Opacity < 100 ? FormattableString.Invariant($"opacity {part.Opacity:0}\u00A0%") : string.Empty;

    /// <summary>The mode in the words of the W3C, where it has them; nothing for the plain one.</summary>
    private static string DescribeBlending(Layer part)
    {
        if (part.BlendMode == (part.IsGroup ? BlendMode.PassThrough : BlendMode.Normal)) return string.Empty;
        if (part.IsGroup && part.BlendMode == BlendMode.Normal) return "isolated";
        return string.Concat(part.BlendMode.ToString().Select((letter, index) => char.IsUpper(letter) && index > 0 ? " " + char.ToLowerInvariant(letter) : char.ToLowerInvariant(letter).ToString()));
    }

    private static string DescribeVisibility(Layer part) => !part.Visible ? "hidden" : part.EffectivelyVisible ? string.Empty : "in a hidden group";

    /// <summary>A vector mask shows only where the file stores it as samples too; a shape's pixels are cut out by its path already.</summary>
    private static string DescribeMask(Layer part)
    {
        var isCut = part.Kind == LayerKind.Shape || (part.Mask is { IsRendered: true } && part.FindPlane(PlaneRole.UserMask) is not null);
        return (part.Detail.Features & LayerFeatures.VectorMask) == 0 || isCut ? string.Empty : "vector mask not drawn";
    }
}
