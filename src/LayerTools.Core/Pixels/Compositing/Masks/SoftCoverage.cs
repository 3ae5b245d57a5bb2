namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>How much of a layer or group a feathered mask lets through.</summary>
internal sealed class SoftCoverage(SoftWindow samples, float density, bool isInverted) : ICoverage
{
    public void Apply(float[] alpha, int x, int y, int count, Workspace workspace)
    {
        var values = workspace.MaskValues.AsSpan(0, count);
        samples.Read(y, x, values);
        for (var i = 0; i < values.Length; i++) alpha[i] *= 1f - (density * (isInverted ? values[i] : 1f - values[i]));
    }
}
