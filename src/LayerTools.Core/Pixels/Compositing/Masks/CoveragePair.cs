namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>Two masks at once: each hides what it hides.</summary>
internal sealed class CoveragePair(ICoverage first, ICoverage second) : ICoverage
{
    public void Apply(float[] alpha, int x, int y, int count, Workspace workspace)
    {
        first.Apply(alpha, x, y, count, workspace);
        second.Apply(alpha, x, y, count, workspace);
    }
}
