namespace LayerTools.Pixels.Compositing.Masks;

/// <summary>How much of a layer or group a stored mask lets through.</summary>
internal sealed class MaskCoverage(PlaneWindow? samples, StoredMask mask) : ICoverage
{
    public void Apply(float[] alpha, int x, int y, int count, Workspace workspace)
    {
        var values = workspace.MaskValues.AsSpan(0, count);
        if (samples is null) values.Fill(mask.Outside);
        else samples.Read(y, x, values, mask.Outside);

        for (var i = 0; i < values.Length; i++) alpha[i] *= mask.Weigh(values[i]);
    }
}
