using LayerTools.Measures;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Tests.Measures.Survey;

/// <summary>The same facts in the plainest way: a look at each pixel, and regions filled pixel by pixel.</summary>
internal static class BruteSurvey
{
    /// <summary>A layer of 8 bits whose channels are stored raw.</summary>
    public static PartSurvey Take(Layer layer, Bounds canvas)
    {
        var box = layer.Bounds;
        var alpha = ((MemoryBytes)layer.FindPlane(PlaneRole.Alpha)!.Data).Bytes;
        var pixels = Enumerable.Range(0, alpha.Length).Select(i => (X: box.Left + (i % box.Width), Y: box.Top + (i / box.Width), Alpha: alpha[i])).ToList();
        var at = pixels.ToDictionary(pixel => (pixel.X, pixel.Y), pixel => pixel.Alpha);
        var painted = pixels.Where(pixel => pixel.Alpha > 0).ToList();
        var islands = Fill(box, (x, y) => Alpha(x, y) > 7).Select(region => Describe(region)).ToList();
        var holes = Fill(Grow(box), (x, y) => Alpha(x, y) < 230).Where(region => region.All(pixel => Alpha(pixel.X, pixel.Y) > 7)).Select(region => Describe(region)).ToList();
        var covered = pixels.Where(pixel => pixel.Alpha >= 128).ToList();
        var map = new CoverageMap(BoxOf(covered.Select(pixel => (pixel.X, pixel.Y))));
        foreach (var (x, y, _) in covered) map.Row(y)[(x - map.Bounds.Left) / 64] |= 1UL << ((x - map.Bounds.Left) % 64);
        return new PartSurvey
        {
            Layer = layer,
            Role = LayerRole.Part,
            Painted = BoxOf(painted.Select(pixel => (pixel.X, pixel.Y))),
            Seen = BoxOf(pixels.Where(pixel => pixel.Alpha > 7).Select(pixel => (pixel.X, pixel.Y))),
            PaintedArea = painted.Count,
            FaintArea = painted.Count(pixel => pixel.Alpha <= 7),
            OutsideArea = painted.Count(pixel => pixel.X < canvas.Left || pixel.X >= canvas.Right || pixel.Y < canvas.Top || pixel.Y >= canvas.Bottom),
            CenterX = painted.Sum(pixel => (pixel.X + 0.5) * pixel.Alpha) / painted.Sum(pixel => (double)pixel.Alpha),
            CenterY = painted.Sum(pixel => (pixel.Y + 0.5) * pixel.Alpha) / painted.Sum(pixel => (double)pixel.Alpha),
            Islands = Rank(islands),
            IslandCount = islands.Count,
            Holes = Rank(holes),
            HoleCount = holes.Count,
            HoleArea = holes.Sum(hole => hole.Area),
            Coverage = map,
        };

        byte Alpha(int x, int y) => at.TryGetValue((x, y), out var value) ? value : (byte)0;
    }

    /// <summary>Painted pixels of a layer as the compositor draws it.</summary>
    public static long DrawArea(LayerFile file, PixelReader reader, Layer layer)
    {
        var raster = new Compositor(file, reader, new CompositeOptions { Subject = layer, Plain = true, Area = layer.Bounds }).RenderWhole();
        return Enumerable.Range(0, raster.Width * raster.Height).LongCount(i => raster.Pixels[(4 * i) + 3] > 0);
    }

    private static List<PartRegion> Rank(List<PartRegion> regions) =>
        [.. regions.OrderByDescending(region => region.Area).ThenBy(region => region.Box.Top).ThenBy(region => region.Box.Left).ThenBy(region => region.Box.Bottom).ThenBy(region => region.Box.Right).Take(IslandFinder.MostBoxes)];

    private static PartRegion Describe(List<(int X, int Y)> region) => new(BoxOf(region), region.Count);

    private static Bounds Grow(Bounds box) => new(box.Left - 1, box.Top - 1, box.Right + 1, box.Bottom + 1);

    private static Bounds BoxOf(IEnumerable<(int X, int Y)> pixels) => pixels.Aggregate(Bounds.Empty, (all, pixel) => all.Union(new Bounds(pixel.X, pixel.Y, pixel.X + 1, pixel.Y + 1)));

    private static IEnumerable<List<(int X, int Y)>> Fill(Bounds box, Func<int, int, bool> belongs)
    {
        var seen = new HashSet<(int, int)>();
        for (var y = box.Top; y < box.Bottom; y++)
        {
            for (var x = box.Left; x < box.Right; x++)
            {
                if (!belongs(x, y) || !seen.Add((x, y))) continue;
                var region = new List<(int X, int Y)> { (x, y) };
                for (var i = 0; i < region.Count; i++)
                {
                    for (var neighbour = 0; neighbour < 9; neighbour++)
                    {
                        var next = (X: region[i].X - 1 + (neighbour % 3), Y: region[i].Y - 1 + (neighbour / 3));
                        if (next.X >= box.Left && next.X < box.Right && next.Y >= box.Top && next.Y < box.Bottom && belongs(next.X, next.Y) && seen.Add(next)) region.Add(next);
                    }
                }

                yield return region;
            }
        }
    }
}
