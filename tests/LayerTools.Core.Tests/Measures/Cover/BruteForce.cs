using LayerTools.Measures.Cover;
using LayerTools.Measures.Survey;
using LayerTools.Model;

namespace LayerTools.Tests.Measures.Cover;

/// <summary>The definitions of cover, word by word and pixel by pixel.</summary>
internal sealed class BruteForce(Bounds canvas, IReadOnlyList<CoverageMap> stack, int part, int maximumDepth)
{
    public bool IsVisible(int x, int y) => IsIn(canvas, x, y) && stack[part][x, y] && !Enumerable.Range(0, part).Any(front => stack[front][x, y]);

    public long Area() => Pixels(canvas).Count(pixel => stack[part][pixel.X, pixel.Y]);

    public long VisibleArea() => Pixels(canvas).Count(pixel => IsVisible(pixel.X, pixel.Y));

    public long OverlapArea(int front) => Pixels(canvas).Count(pixel => stack[part][pixel.X, pixel.Y] && stack[front][pixel.X, pixel.Y]);

    public List<SeamPixel> Seam(int front)
    {
        var (above, below) = (stack[front], stack[part]);
        var seam = Pixels(canvas).Where(pixel => IsVisible(pixel.X, pixel.Y) && Touches(above, pixel.X, pixel.Y)).ToDictionary(pixel => pixel, _ => SeamPixel.Deep);
        var free = Pixels(CoverageBits.Inflate(canvas, 24)).Where(pixel => !above[pixel.X, pixel.Y]).ToList();
        foreach (var unpainted in Pixels(canvas).Where(pixel => above[pixel.X, pixel.Y] && !below[pixel.X, pixel.Y]))
        {
            var nearest = free.MinBy(pixel => (Squared(pixel, unpainted), pixel.X, pixel.Y));
            var distance = Squared(nearest, unpainted);
            if (distance >= (maximumDepth + 1) * (maximumDepth + 1)) continue;
            if (!seam.ContainsKey(nearest)) continue;
            foreach (var owner in seam.Keys.Where(pixel => Math.Abs(pixel.X - nearest.X) <= 2 && Math.Abs(pixel.Y - nearest.Y) <= 2).ToList()) seam[owner] = Math.Min(seam[owner], distance);
        }

        var reach = SeamPixel.GroundReach(maximumDepth);
        var ground = Pixels(CoverageBits.Inflate(canvas, reach)).Where(pixel => !above[pixel.X, pixel.Y] && !below[pixel.X, pixel.Y]).ToList();
        return seam.Select(pixel =>
        {
            var distance = ground.Count == 0 ? SeamPixel.Deep : ground.Min(other => Squared(other, pixel.Key));
            var limit = pixel.Value == SeamPixel.Deep ? SeamPixel.NearGround : reach;
            return new SeamPixel(pixel.Key.X, pixel.Key.Y, pixel.Value, distance < limit * limit ? distance : SeamPixel.Deep);
        }).ToList();
    }

    private static bool Touches(CoverageMap map, int x, int y) => map[x - 1, y] || map[x + 1, y] || map[x, y - 1] || map[x, y + 1];

    private static int Squared((int X, int Y) one, (int X, int Y) other) => ((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y));

    private static bool IsIn(Bounds bounds, int x, int y) => x >= bounds.Left && x < bounds.Right && y >= bounds.Top && y < bounds.Bottom;

    private static IEnumerable<(int X, int Y)> Pixels(Bounds bounds) =>
        from y in Enumerable.Range(bounds.Top, bounds.Height) from x in Enumerable.Range(bounds.Left, bounds.Width) select (x, y);
}
