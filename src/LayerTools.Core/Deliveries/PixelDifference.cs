using LayerTools.Model;

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
        return rights.SelectMany(right => downs.Select(down => (right, down))).Distinct();
    }

    /// <summary>The difference at one shift; null if it is not less than <paramref name="most"/> pixels.</summary>
    private static PixelDifference? Measure(ContentReader oldReader, Layer old, Bounds oldPainted, ContentReader newReader, Layer @new, Bounds newPainted, int right, int down, long most, CancellationToken cancellation)
    {
        var area = (oldPainted.IsEmpty ? oldPainted : oldPainted.Shift(right, down)).Union(newPainted);
        using var oldRows = new PlacedRows(oldReader, old, right, down, area);
        using var newRows = new PlacedRows(newReader, @new, 0, 0, area);
        long differing = 0, painted = 0;
        var (largest, box) = (0, Bounds.Empty);
        for (var y = area.Top; y < area.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            var one = oldRows.Read(y);
            var two = newRows.Read(y);
            var (first, last) = (-1, -1);
            for (var x = 0; x < area.Width; x++)
            {
                var i = 4 * x;
                if ((one[i + 3] | two[i + 3]) == 0) continue;
                painted++;
                var difference = Math.Max(Math.Max(Math.Abs(one[i] - two[i]), Math.Abs(one[i + 1] - two[i + 1])), Math.Max(Math.Abs(one[i + 2] - two[i + 2]), Math.Abs(one[i + 3] - two[i + 3])));
                if (difference == 0) continue;
                differing++;
                largest = Math.Max(largest, difference);
                if (first < 0) first = x;
                last = x;
            }

            if (differing >= most) return null;
            if (first >= 0) box = box.Union(new Bounds(area.Left + first, y, area.Left + last + 1, y + 1));
        }

        return new PixelDifference(right, down, differing, painted, largest, box);
    }
}
