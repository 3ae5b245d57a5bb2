namespace LayerTools.Measures.Detail;

/// <summary>Weights that fade a line of samples in and out, so that its ends are no edge: half a raised cosine, 0 just outside of both ends.</summary>
internal static class HannWindow
{
    public static double[] Create(int length)
    {
        var weights = new double[length];
        for (var i = 0; i < length; i++) weights[i] = 0.5 - (0.5 * Math.Cos(2 * Math.PI * (i + 1) / (length + 1)));
        return weights;
    }
}
