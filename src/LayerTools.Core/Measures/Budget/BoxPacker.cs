namespace LayerTools.Measures.Budget;

/// <summary>
/// Packs boxes onto as few pages of one size as it can: MAXRECTS (see <see cref="PackPage"/>), each box on the first page that takes it ("bin first
/// fit"), tried with every rule and every order, the best kept. Depends on nothing but what is given, so that the same boxes always lie the same way.
/// </summary>
internal sealed class BoxPacker(int width, int height, bool mayTurn)
{
    private static readonly PackOrder[] Orders = [PackOrder.Area, PackOrder.LongSide, PackOrder.ShortSide, PackOrder.Perimeter, PackOrder.Height, PackOrder.Width];

    private static readonly PackRule[] Rules = [PackRule.BestShortSideFit, PackRule.BestAreaFit, PackRule.ContactPoint, PackRule.BottomLeft, PackRule.BestLongSideFit];

    /// <summary>Whether a box fits an empty page.</summary>
    public bool Fits(PackSize size) => (size.Width <= width && size.Height <= height) || (mayTurn && size.Height <= width && size.Width <= height);

    /// <summary>Packs boxes, of which each must fit an empty page.</summary>
    /// <param name="sizes">The boxes.</param>
    /// <param name="enough">A number of pages that is good enough to look no further; 0 for the fewest that can be found.</param>
    /// <param name="cancellation">Stops.</param>
    public PackOutcome Pack(IReadOnlyList<PackSize> sizes, int enough = 0, CancellationToken cancellation = default)
    {
        if (sizes.FirstOrDefault(size => !Fits(size)) is { Width: > 0 } large) throw new ArgumentException($"{large} fits no page.", nameof(sizes));
        var fewest = FindFewestPages(sizes);
        if (sizes.Count == 0) return new PackOutcome([], 0, 0);
        PackOutcome? best = null;
        var bestRest = long.MaxValue;
        foreach (var order in Orders)
        {
            var sequence = Sort(sizes, order);
            foreach (var rule in Rules)
            {
                var (places, pages) = PackOnce(sizes, sequence, rule, best?.PageCount ?? int.MaxValue, cancellation);
                if (pages is null) continue;
                // Of two packings with as many pages the one whose emptiest page holds less leaves more room.
                var rest = pages.Min(page => page.UsedArea);
                if (best is not null && (pages.Count, rest).CompareTo((best.PageCount, bestRest)) >= 0) continue;
                (best, bestRest) = (new PackOutcome(places, pages.Count, fewest), rest);
                if (best.PageCount <= Math.Max(fewest, enough)) return best;
            }
        }

        return best!;
    }

    /// <summary>
    /// Pages that any packing needs: the area of all boxes by that of a page, rounded up; or the number of boxes that are larger than half a page both
    /// ways, since no two of these fit one page. Whichever is more.
    /// </summary>
    public int FindFewestPages(IReadOnlyList<PackSize> sizes)
    {
        var pageArea = (long)width * height;
        var byArea = (sizes.Sum(size => size.Area) + pageArea - 1) / pageArea;
        return (int)Math.Max(byArea, sizes.Count(IsAlone));
    }

    private bool IsAlone(PackSize size)
    {
        // A turned box has to be too large for two either way round.
        var isLarge = 2L * size.Width > width && 2L * size.Height > height;
        return mayTurn ? isLarge && 2L * size.Height > width && 2L * size.Width > height : isLarge;
    }

    private (PackPlace[] Places, List<PackPage>? Pages) PackOnce(IReadOnlyList<PackSize> sizes, int[] sequence, PackRule rule, int mostPages, CancellationToken cancellation)
    {
        var places = new PackPlace[sizes.Count];
        var pages = new List<PackPage>();
        foreach (var index in sequence)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var page = 0; ; page++)
            {
                if (page == mostPages) return (places, null);
                if (page == pages.Count) pages.Add(new PackPage(width, height));
                if (pages[page].TryAdd(sizes[index], mayTurn, rule) is not { } found) continue;
                places[index] = new PackPlace(page, found.Box.Left, found.Box.Top, found.Turned);
                break;
            }
        }

        return (places, pages);
    }

    private static int[] Sort(IReadOnlyList<PackSize> sizes, PackOrder order)
    {
        Func<PackSize, long> key = order switch
        {
            PackOrder.Area => size => size.Area,
            PackOrder.LongSide => size => Math.Max(size.Width, size.Height),
            PackOrder.ShortSide => size => Math.Min(size.Width, size.Height),
            PackOrder.Perimeter => size => size.Width + (long)size.Height,
            PackOrder.Height => size => size.Height,
            _ => size => size.Width,
        };
        return [.. Enumerable.Range(0, sizes.Count).OrderByDescending(index => key(sizes[index])).ThenByDescending(index => sizes[index].Area).ThenBy(index => index)];
    }
}
