using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>Steps of equal width, n of them, spread from black to white: ⌊255/256 · n · x⌋ / (n − 1) (as psd-tools measured).</summary>
internal static class PosterizationTone
{
    public static double Find(Posterization posterization, double value) =>
        Math.Min(1, Math.Floor(value * posterization.Steps * byte.MaxValue / (byte.MaxValue + 1)) / (posterization.Steps - 1));
}
