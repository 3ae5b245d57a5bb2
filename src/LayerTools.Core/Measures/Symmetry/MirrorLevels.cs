namespace LayerTools.Measures.Symmetry;

/// <summary>Two coverages at full size and at a half, a quarter ... of it, made when they are asked for. Not for several threads at a time.</summary>
internal sealed class MirrorLevels(MirrorPair pair)
{
    private readonly List<MirrorPair> levels = [pair];

    /// <summary>Both at 2^−<paramref name="level"/> of their size.</summary>
    public MirrorPair this[int level]
    {
        get
        {
            while (levels.Count <= level) levels.Add(levels[levels.Count - 1].Halve());
            return levels[level];
        }
    }

    /// <summary>The first level that is as small as asked for.</summary>
    public int FindLevel(Func<MirrorPair, bool> isSmall)
    {
        var level = 0;
        while (!isSmall(this[level])) level++;
        return level;
    }
}
