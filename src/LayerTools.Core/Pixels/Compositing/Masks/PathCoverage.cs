namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>How much of a layer or group a vector mask lets through.</summary>
internal sealed class PathCoverage(PathFill fill, float density) : ICoverage
{
    public void Apply(float[] alpha, int x, int y, int count, Workspace workspace)
    {
        var values = workspace.GetPathRow(fill, y);
        var start = x - workspace.Row.Left;
        for (var i = 0; i < count; i++) alpha[i] *= 1f - (density * (1f - values[start + i]));
    }
}
