namespace LayerTools.Pixels.Compositing;

/// <summary>How much of a layer or group a mask lets through.</summary>
internal sealed class MaskCoverage(PlaneWindow? samples, StoredMask mask)
{
    private readonly float outside = mask.DefaultColor / (float)byte.MaxValue;

    /// <summary>Multiplies the first <paramref name="count"/> pixels' alpha by the mask at canvas column <paramref name="x"/> and after.</summary>
    public void Apply(float[] alpha, int x, int y, int count, float[] scratch)
    {
        var values = scratch.AsSpan(0, count);
        if (samples is null) values.Fill(outside);
        else samples.Read(y, x, values, outside);

        for (var i = 0; i < values.Length; i++) alpha[i] *= mask.Weigh(values[i]);
    }
}
