namespace LayerTools.Pixels.Colors;

/// <summary>A profile's curve of values in equal steps (ICC.1, 'curveType'), straight between them; at least two, none smaller than the one before.</summary>
internal sealed class TableLightCurve(double[] values) : LightCurve
{
    public override double Decode(double encoded)
    {
        var place = Math.Max(0, Math.Min(1, encoded)) * (values.Length - 1);
        var low = Math.Min((int)place, values.Length - 2);
        return values[low] + ((place - low) * (values[low + 1] - values[low]));
    }

    public override double Encode(double light)
    {
        var found = Array.BinarySearch(values, light);
        if (found >= 0) return (double)found / (values.Length - 1);
        var above = ~found;
        if (above == 0) return 0;
        if (above == values.Length) return 1;
        var part = (light - values[above - 1]) / (values[above] - values[above - 1]);
        return (above - 1 + part) / (values.Length - 1);
    }
}
