namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>A new value for every value of a channel: 256 entries for 8 bit, 65,536 for 16 bit. 32 bit, whose values are light, is looked up by the sRGB encoding, in which levels count.</summary>
internal sealed class ToneTable
{
    private readonly float[] values;
    private readonly bool isLight;

    /// <summary>Makes the table of a function from 0 to 1 to 0 to 1; what lies outside is cut off.</summary>
    public ToneTable(int bitDepth, Func<double, double> function)
    {
        isLight = bitDepth == 32;
        values = new float[bitDepth == 8 ? 1 << 8 : 1 << 16];
        var last = values.Length - 1;
        for (var i = 0; i < values.Length; i++)
        {
            var value = Math.Max(0, Math.Min(1, function((double)i / last)));
            values[i] = (float)(Math.Floor((value * last) + 0.5) / last);
        }
    }

    public void Apply(Span<float> samples)
    {
        if (isLight)
        {
            foreach (ref var sample in samples) sample = (float)Colors.SrgbCurve.Decode(Find((float)Colors.SrgbCurve.Encode(sample)));
        }
        else
        {
            foreach (ref var sample in samples) sample = Find(sample);
        }
    }

    private float Find(float sample) => values[(int)((Math.Max(0f, Math.Min(1f, sample)) * (values.Length - 1)) + 0.5f)];
}
