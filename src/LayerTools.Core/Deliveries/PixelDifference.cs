using LayerTools.Model;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>How far the pixels of a layer differ from those it had.</summary>
/// <param name="Right">How far the old pixels were moved to the right for it, px.</param>
/// <param name="Down">How far they were moved down, px.</param>
/// <param name="Differing">Pixels that differ.</param>
/// <param name="Painted">Pixels that are painted in any of both.</param>
/// <param name="Largest">The largest difference of a premultiplied channel, 0 to 255.</param>
/// <param name="Box">The rectangle of the pixels that differ, canvas px.</param>
internal sealed record PixelDifference(int Right, int Down, long Differing, long Painted, int Largest, Bounds Box)
{
    /// <summary>The share of pixels that differ, 0 to 1.</summary>
    public double Share => Painted == 0 ? 0 : (double)Differing / Painted;

    /// <summary>The least difference there is when the old pixels may have been moved so that an edge of what is painted still lies on one.</summary>
    public static PixelDifference FindLeast(ContentReader oldReader, Layer old, Bounds oldPainted, ContentReader newReader, Layer @new, Bounds newPainted, CancellationToken cancellation)
    {
        PixelDifference? least = null;
        foreach (var (right, down) in FindShifts(oldPainted, newPainted))
        {
            var difference = Measure(oldReader, old, oldPainted, newReader, @new, newPainted, right, down, least?.Differing ?? long.MaxValue, cancellation);
            if (difference is not null) least = difference;
        }

        return least!;
    }

    private static IEnumerable<(int Right, int Down)> FindShifts(Bounds old, Bounds @new)
    {
        if (old.IsEmpty || @new.IsEmpty) return [(0, 0)];
        int[] rights = [0, @new.Left - old.Left, @new.Right - old.Right];
        int[] downs = [0, @new.Top - old.Top, @new.Bottom - old.Bottom];
        return rights.SelectMany(right => downs.Select(down => (right, down))).Distinct().Where(IsNear);

        // What lies impossibly far apart is compared corner on corner only.
        bool IsNear((int Right, int Down) shift)
        {
            var area = old.Shift(shift.Right, shift.Down).Union(@new);
            return area.Width <= AreaReducer.LargestSide && area.Height <= AreaReducer.LargestSide;
        }
    }

    /// <summary>The difference at one shift; null if it is not less than <paramref name="most"/> pixels.</summary>
    private static PixelDifference? Measure(ContentReader oldReader, Layer old, Bounds oldPainted, ContentReader newReader, Layer @new, Bounds newPainted, int right, int down, long most, CancellationToken cancellation)
    {
        var area = (oldPainted.IsEmpty ? oldPainted : oldPainted.Shift(right, down)).Union(newPainted);
        using var oldRows = new PlacedRows(oldReader, old, oldPainted, right, down, area);
        using var newRows = new PlacedRows(newReader, @new, newPainted, 0, 0, area);
        long differing = 0, painted = 0;
        var (largest, box) = (0, Bounds.Empty);
        for (var y = area.Top; y < area.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            oldRows.Read(y);
            newRows.Read(y);
            painted += CountPainted(oldRows.Opacity, newRows.Opacity);
            var (first, last) = (-1, -1);
            if (!AreSame(oldRows, newRows)) (first, last) = MeasureRow(oldRows, newRows, ref differing, ref largest);
            if (differing >= most) return null;
            if (first >= 0) box = box.Union(new Bounds(area.Left + first, y, area.Left + last + 1, y + 1));
        }

        return new PixelDifference(right, down, differing, painted, largest, box);
    }

    private static bool AreSame(PlacedRows one, PlacedRows two) =>
        one.Opacity.SequenceEqual(two.Opacity) && one.Color(0).SequenceEqual(two.Color(0)) && one.Color(1).SequenceEqual(two.Color(1)) && one.Color(2).SequenceEqual(two.Color(2));

    private static int CountPainted(ReadOnlySpan<byte> one, ReadOnlySpan<byte> two)
    {
        var count = 0;
        two = two.Slice(0, one.Length);
        for (var x = 0; x < one.Length; x++) count += (one[x] | two[x]) == 0 ? 0 : 1;
        return count;
    }

    /// <summary>The first and the last pixel that differ; -1 if none does.</summary>
    private static (int First, int Last) MeasureRow(PlacedRows one, PlacedRows two, ref long differing, ref int largest)
    {
        ReadOnlySpan<byte> alpha = one.Opacity, red = one.Color(0), green = one.Color(1), blue = one.Color(2);
        ReadOnlySpan<byte> otherAlpha = two.Opacity, otherRed = two.Color(0), otherGreen = two.Color(1), otherBlue = two.Color(2);
        var (first, last) = (-1, -1);
        for (var x = 0; x < alpha.Length; x++)
        {
            var (a, b) = (alpha[x], otherAlpha[x]);
            if ((a | b) == 0 || (a == b && red[x] == otherRed[x] && green[x] == otherGreen[x] && blue[x] == otherBlue[x])) continue;
            var difference = Of(one, two, x);
            if (difference == 0) continue;
            differing++;
            largest = Math.Max(largest, difference);
            if (first < 0) first = x;
            last = x;
        }

        return (first, last);
    }

    /// <summary>The largest difference of a premultiplied channel of one pixel, 0 to 255.</summary>
    public static int Of(PlacedRows one, PlacedRows two, int x)
    {
        var (a, b) = (one.Opacity[x], two.Opacity[x]);
        return Math.Max(
            Math.Max(Difference(one.Color(0)[x], a, two.Color(0)[x], b), Difference(one.Color(1)[x], a, two.Color(1)[x], b)),
            Math.Max(Difference(one.Color(2)[x], a, two.Color(2)[x], b), Math.Abs(a - b)));
    }

    private static int Difference(byte color, byte alpha, byte otherColor, byte otherAlpha) => Math.Abs(Multiply(color, alpha) - Multiply(otherColor, otherAlpha));

    private static int Multiply(byte color, byte alpha) => ((color * alpha) + (byte.MaxValue / 2)) / byte.MaxValue;
}
