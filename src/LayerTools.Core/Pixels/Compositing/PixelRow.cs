using System.Numerics;

namespace LayerTools.Pixels.Compositing;

/// <summary>
/// A row of pixels while they are mixed: one array of floats per channel, 0 to 1. Whether colours are premultiplied is the holder's business.
/// The arrays are longer than the row, so that whole vectors can be read and written at its end.
/// </summary>
internal sealed class PixelRow
{
    public PixelRow(int colorCount, int left, int width)
    {
        Left = left;
        Width = width;
        Colors = new float[colorCount][];
        for (var color = 0; color < colorCount; color++) Colors[color] = new float[width + Vector<float>.Count];
        Alpha = new float[width + Vector<float>.Count];
    }

    /// <summary>The canvas column of the first pixel, px.</summary>
    public int Left { get; set; }

    public int Width { get; }

    /// <summary>One array for grey, three for red, green, blue.</summary>
    public float[][] Colors { get; }

    public float[] Alpha { get; }

    /// <summary>Makes the pixels from canvas column <paramref name="left"/> up to <paramref name="right"/>, and what a vector may touch after them, transparent.</summary>
    public void Clear(int left, int right)
    {
        var start = left - Left;
        var length = right - left + Vector<float>.Count;
        foreach (var color in Colors) Array.Clear(color, start, length);
        Array.Clear(Alpha, start, length);
    }

    /// <summary>Makes the rest of the vector after the first <paramref name="count"/> pixels transparent, so that it changes nothing when it is mixed.</summary>
    public void ClearTail(int count)
    {
        foreach (var color in Colors) Array.Clear(color, count, Vector<float>.Count);
        Array.Clear(Alpha, count, Vector<float>.Count);
    }

    /// <summary>Copies all pixels into a row of the same place and size.</summary>
    public void CopyTo(PixelRow row)
    {
        for (var color = 0; color < Colors.Length; color++) Array.Copy(Colors[color], row.Colors[color], Colors[color].Length);
        Array.Copy(Alpha, row.Alpha, Alpha.Length);
    }

    /// <summary>Copies pixels from index <paramref name="at"/> on to the beginning of another row.</summary>
    public void CopyTo(int at, PixelRow row, int count)
    {
        for (var color = 0; color < Colors.Length; color++) Array.Copy(Colors[color], at, row.Colors[color], 0, count);
        Array.Copy(Alpha, at, row.Alpha, 0, count);
    }

    /// <summary>Goes towards another row of the same place and size, by a weight of 0 to 1 for each of its pixels.</summary>
    public void Fade(PixelRow other, float[] weights, int left, int count)
    {
        var start = left - Left;
        for (var color = 0; color < Colors.Length; color++) Fade(Colors[color], other.Colors[color], weights, start, count);
        Fade(Alpha, other.Alpha, weights, start, count);
    }

    /// <summary>Whether pixels from index <paramref name="at"/> on are all fully transparent.</summary>
    public bool IsTransparent(int at, int count) => AreZero(Alpha.AsSpan(at, count));

    /// <summary>Whether all of the values are 0.</summary>
    public static bool AreZero(ReadOnlySpan<float> values)
    {
        foreach (var value in values)
        {
            if (value != 0f) return false;
        }

        return true;
    }

    /// <summary>Takes pixels of this premultiplied row, from index <paramref name="at"/> on, out of premultiplication, so that they mix as a layer's do; into the beginning of another row.</summary>
    public void StraightenTo(int at, PixelRow straight, int count)
    {
        for (var i = 0; i < count; i += Vector<float>.Count)
        {
            var alpha = new Vector<float>(Alpha, at + i);
            var isSeen = Vector.GreaterThan(alpha, Vector<float>.Zero);
            alpha.CopyTo(straight.Alpha, i);
            for (var channel = 0; channel < straight.Colors.Length; channel++)
            {
                var color = new Vector<float>(Colors[channel], at + i) / alpha;
                Vector.ConditionalSelect(isSeen, color, Vector<float>.Zero).CopyTo(straight.Colors[channel], i);
            }
        }
    }

    private static void Fade(float[] from, float[] to, float[] weights, int start, int count)
    {
        for (var i = start; i < start + count; i++) from[i] += (to[i] - from[i]) * weights[i];
    }
}
