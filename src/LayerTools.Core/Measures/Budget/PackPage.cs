using LayerTools.Model;

namespace LayerTools.Measures.Budget;

/// <summary>
/// One page of the MAXRECTS method (J. Jylänki, "A Thousand Ways to Pack the Bin", 2010): all largest free rectangles are kept, overlapping as they
/// may; a box goes into the corner of one of them, and each one that it touches is split into the up to four that remain.
/// </summary>
internal sealed class PackPage(int width, int height)
{
    private readonly List<Bounds> free = [new Bounds(0, 0, width, height)];
    private readonly List<Bounds> used = [];

    public long UsedArea { get; private set; }

    /// <summary>Puts a box in the best place that a rule knows.</summary>
    /// <returns>Its rectangle and whether it was turned; null if it fits nowhere.</returns>
    public (Bounds Box, bool Turned)? TryAdd(PackSize size, bool mayTurn, PackRule rule)
    {
        (Bounds Box, bool Turned)? best = null;
        var bestScore = (long.MaxValue, long.MaxValue);
        foreach (var turned in mayTurn && size.Width != size.Height ? new[] { false, true } : [false])
        {
            var turnedSize = turned ? size.Turned : size;
            foreach (var place in free)
            {
                if (turnedSize.Width > place.Width || turnedSize.Height > place.Height) continue;
                var score = Score(place, turnedSize, rule);
                if (score.CompareTo(bestScore) >= 0) continue;
                bestScore = score;
                best = (Bounds.FromSize(place.Left, place.Top, turnedSize.Width, turnedSize.Height), turned);
            }
        }

        if (best is { } found) Take(found.Box);
        return best;
    }

    /// <summary>The lower the better.</summary>
    private (long First, long Second) Score(Bounds place, PackSize size, PackRule rule)
    {
        long spareWidth = place.Width - size.Width;
        long spareHeight = place.Height - size.Height;
        var (shorter, longer) = (Math.Min(spareWidth, spareHeight), Math.Max(spareWidth, spareHeight));
        return rule switch
        {
            PackRule.BestShortSideFit => (shorter, longer),
            PackRule.BestLongSideFit => (longer, shorter),
            PackRule.BestAreaFit => (place.Area - size.Area, shorter),
            PackRule.BottomLeft => (place.Top + size.Height, place.Left),
            _ => (-FindContact(Bounds.FromSize(place.Left, place.Top, size.Width, size.Height)), shorter),
        };
    }

    private long FindContact(Bounds box)
    {
        long contact = (box.Left == 0 ? box.Height : 0) + (box.Right == width ? box.Height : 0) + (box.Top == 0 ? box.Width : 0) + (box.Bottom == height ? box.Width : 0);
        foreach (var other in used)
        {
            if (other.Left == box.Right || other.Right == box.Left) contact += Overlap(other.Top, other.Bottom, box.Top, box.Bottom);
            if (other.Top == box.Bottom || other.Bottom == box.Top) contact += Overlap(other.Left, other.Right, box.Left, box.Right);
        }

        return contact;
    }

    private static int Overlap(int start, int end, int otherStart, int otherEnd) => Math.Max(0, Math.Min(end, otherEnd) - Math.Max(start, otherStart));

    private void Take(Bounds box)
    {
        used.Add(box);
        UsedArea += box.Area;
        var pieces = new List<Bounds>();
        var kept = 0;
        for (var i = 0; i < free.Count; i++)
        {
            if (free[i].Intersect(box).IsEmpty) free[kept++] = free[i];
            else Split(free[i], box, pieces);
        }

        free.RemoveRange(kept, free.Count - kept);
        // What was free before and is free still cannot lie in a piece of another, or it would have lain in that other.
        for (var i = 0; i < pieces.Count; i++)
        {
            if (!free.Exists(place => Holds(place, pieces[i])) && !IsInAnother(pieces, i)) free.Add(pieces[i]);
        }
    }

    private static void Split(Bounds place, Bounds box, List<Bounds> pieces)
    {
        if (box.Left > place.Left) pieces.Add(place with { Right = box.Left });
        if (box.Right < place.Right) pieces.Add(place with { Left = box.Right });
        if (box.Top > place.Top) pieces.Add(place with { Bottom = box.Top });
        if (box.Bottom < place.Bottom) pieces.Add(place with { Top = box.Bottom });
    }

    /// <summary>Of equal pieces the first one stays.</summary>
    private static bool IsInAnother(List<Bounds> pieces, int index)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            if (i != index && Holds(pieces[i], pieces[index]) && (i < index || pieces[i] != pieces[index])) return true;
        }

        return false;
    }

    private static bool Holds(Bounds outer, Bounds inner) => inner.Left >= outer.Left && inner.Top >= outer.Top && inner.Right <= outer.Right && inner.Bottom <= outer.Bottom;
}
