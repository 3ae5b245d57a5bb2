using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>Coverage over a rectangle, 0 to 65535: a layer's shape, or what an effect makes of it. Outside it is 0.</summary>
internal sealed class ShapePlane(Bounds bounds)
{
    public const int Full = ushort.MaxValue;

    public Bounds Bounds { get; } = bounds;

    public int Width { get; } = bounds.Width;

    public int Height { get; } = bounds.Height;

    public ushort[] Samples { get; } = new ushort[checked(bounds.Width * bounds.Height)];

    public static ushort Encode(float value) => value > 0 ? (ushort)((Math.Min(value, 1f) * Full) + 0.5f) : (ushort)0;

    /// <summary>The value at a place, canvas px.</summary>
    public int Get(int x, int y) => x < Bounds.Left || x >= Bounds.Right || y < Bounds.Top || y >= Bounds.Bottom ? 0 : Samples[((y - Bounds.Top) * Width) + x - Bounds.Left];

    /// <summary>The values of a run of pixels, 0 to 1.</summary>
    public void Read(int y, int x, Span<float> values)
    {
        if (y < Bounds.Top || y >= Bounds.Bottom)
        {
            values.Clear();
            return;
        }

        var row = ((y - Bounds.Top) * Width) - Bounds.Left;
        for (var i = 0; i < values.Length; i++)
        {
            var column = x + i;
            values[i] = column < Bounds.Left || column >= Bounds.Right ? 0f : Samples[row + column] * (1f / Full);
        }
    }

    /// <summary>What is not covered.</summary>
    public ShapePlane Invert()
    {
        var inverse = new ShapePlane(Bounds);
        for (var i = 0; i < Samples.Length; i++) inverse.Samples[i] = (ushort)(Full - Samples[i]);
        return inverse;
    }

    /// <summary>The same values in another place of the same rectangle; what moves in has the value <paramref name="outside"/>.</summary>
    public ShapePlane Shift(int right, int down, ushort outside)
    {
        if (right == 0 && down == 0) return this;
        var moved = new ShapePlane(Bounds);
        for (var y = 0; y < Height; y++)
        {
            var target = moved.Samples.AsSpan(y * Width, Width);
            var from = y - down;
            target.Fill(outside);
            if (from < 0 || from >= Height || Math.Abs((long)right) >= Width) continue;
            var source = Samples.AsSpan(from * Width, Width);
            if (right >= 0) source.Slice(0, Width - right).CopyTo(target.Slice(right));
            else source.Slice(-right).CopyTo(target);
        }

        return moved;
    }
}
