using LayerTools.Model;

namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>
/// Channels that a piece leaves alone, and brightness that it must have. A brightness range lets a pixel through by the product of two slopes, from 0 to 1
/// between its dark ends and from 1 to 0 between its light ends; ranges multiply. Grey is the luminosity of W3C Compositing and Blending Level 1. What is
/// transparent below has no brightness, so that the backdrop's ranges work there by its opacity. (Definition; no real file at hand that uses them stores a picture.)
/// </summary>
internal sealed class BlendLimits(BlendingRules rules)
{
    private static readonly float[] Weights = [0.3f, 0.59f, 0.11f];
    private readonly BlendingRange[] ranges = [.. rules.Ranges];
    private readonly int[] excluded = [.. rules.ExcludedChannels.Where(channel => channel >= 0).Distinct()];

    public bool HasExcluded => excluded.Length > 0;

    /// <summary>Null where there is nothing to limit.</summary>
    public static BlendLimits? Find(Layer layer) => layer.Detail.Blending is { Ranges.Count: > 0 } or { ExcludedChannels.Count: > 0 } ? new BlendLimits(layer.Detail.Blending) : null;

    /// <summary>Multiplies the piece's alpha by what the ranges let through.</summary>
    /// <param name="target">What lies below, premultiplied.</param>
    /// <param name="at">Index in the target of the piece's first pixel.</param>
    /// <param name="piece">The piece, not premultiplied; its alpha is changed.</param>
    /// <param name="count">Pixels.</param>
    public void Apply(PixelRow target, int at, PixelRow piece, int count)
    {
        foreach (var range in ranges)
        {
            if (range.Channel >= piece.Colors.Length) continue;
            for (var i = 0; i < count; i++)
            {
                var alphaBelow = target.Alpha[at + i];
                var weight = Weigh(Get(piece, range.Channel, i), range.Source);
                if (alphaBelow > 0) weight *= 1f - (alphaBelow * (1f - Weigh(Get(target, range.Channel, at + i) / alphaBelow, range.Backdrop)));
                piece.Alpha[i] *= weight;
            }
        }
    }

    /// <summary>Puts back the channels that are left alone. Where the target has become more opaque they count as white there, as what is transparent does in the format.</summary>
    /// <param name="target">What the piece was mixed into, premultiplied.</param>
    /// <param name="at">Index of the first pixel.</param>
    /// <param name="before">The target's pixels as they were, from index 0.</param>
    /// <param name="count">Pixels.</param>
    public void Restore(PixelRow target, int at, PixelRow before, int count)
    {
        foreach (var channel in excluded.Where(channel => channel < target.Colors.Length))
        {
            for (var i = 0; i < count; i++) target.Colors[channel][at + i] = before.Colors[channel][i] + target.Alpha[at + i] - before.Alpha[i];
        }
    }

    private static float Get(PixelRow row, int? channel, int at)
    {
        if (channel is { } one) return row.Colors[one][at];
        if (row.Colors.Length == 1) return row.Colors[0][at];
        var sum = 0f;
        for (var i = 0; i < Weights.Length; i++) sum += Weights[i] * row.Colors[i][at];
        return sum;
    }

    private static float Weigh(float color, BrightnessLimits limits)
    {
        var value = color * byte.MaxValue;
        var rising = value >= limits.DarkEnd ? 1f : value <= limits.DarkBegin ? 0f : (value - limits.DarkBegin) / (limits.DarkEnd - limits.DarkBegin);
        var falling = value <= limits.LightBegin ? 1f : value >= limits.LightEnd ? 0f : (limits.LightEnd - value) / (limits.LightEnd - limits.LightBegin);
        return rising * falling;
    }
}
