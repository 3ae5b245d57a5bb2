using LayerTools.Measures.Cover;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Tests.Support;

namespace LayerTools.Tests.Measures.Cover;

/// <summary>Shapes to test cover with.</summary>
internal static class CoverageShapes
{
    public static void Cover(this CoverageMap map, int x, int y) => map.Row(y)[(x - map.Bounds.Left) >> 6] |= 1UL << ((x - map.Bounds.Left) & 63);

    /// <summary>A map of all pixels that a condition holds for.</summary>
    public static CoverageMap Where(Bounds bounds, Func<int, int, bool> covers)
    {
        var map = new CoverageMap(bounds);
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            for (var x = bounds.Left; x < bounds.Right; x++)
            {
                if (covers(x, y)) map.Cover(x, y);
            }
        }

        return map;
    }

    public static CoverageMap Box(int left, int top, int right, int bottom) => Where(new Bounds(left, top, right, bottom), (_, _) => true);

    public static CoverageMap Disc(int x, int y, int radius) =>
        Where(new Bounds(x - radius, y - radius, x + radius + 1, y + radius + 1), (column, row) => ((column - x) * (column - x)) + ((row - y) * (row - y)) <= radius * radius);

    /// <summary>A figure of parts that cover this, front to back, called A, B, C ...</summary>
    public static (LayerFile File, IReadOnlyList<CoverPart> Stack) Figure(int width, int height, params CoverageMap[] parts)
    {
        var layers = parts.Select((_, i) => ModelBuilder.Pixel(((char)('A' + i)).ToString())).ToArray();
        return (ModelBuilder.File("figure.psd", width, height, layers), parts.Select((map, i) => new CoverPart(layers[i], map, Hides: true)).ToList());
    }

    /// <summary>The part at the back with the one right in front of it.</summary>
    public static SeamCover MeasureSeam(int maximumDepth, params CoverageMap[] parts)
    {
        var (file, stack) = Figure(200, 200, parts);
        return FigureCover.Measure(file, stack, part => part == stack[^1], new CoverOptions { MaximumDepth = maximumDepth }).Seams[^1];
    }
}
