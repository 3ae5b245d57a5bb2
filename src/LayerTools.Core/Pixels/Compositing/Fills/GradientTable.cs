using LayerTools.Model.Fills;

namespace LayerTools.Pixels.Compositing.Fills;

/// <summary>A gradient's colours and opacities at evenly spaced places.</summary>
internal sealed class GradientTable
{
    private const int Steps = 4096;
    private readonly float[][] colors;
    private readonly float[] alpha = new float[Steps + 1];

    public GradientTable(Gradient gradient, int channelCount, bool isReversed)
    {
        var places = gradient.Colors.Select(stop => stop.Place).ToArray();
        var midpoints = gradient.Colors.Select(stop => stop.Midpoint).ToArray();
        var opacityPlaces = gradient.Opacities.Select(stop => stop.Place).ToArray();
        var opacityMidpoints = gradient.Opacities.Select(stop => stop.Midpoint).ToArray();
        var opacities = gradient.Opacities.Select(stop => stop.Opacity).ToArray();
        colors = new float[channelCount][];
        for (var channel = 0; channel < channelCount; channel++)
        {
            var values = gradient.Colors.Select(stop => stop.Color.Get(channel, channelCount)).ToArray();
            colors[channel] = new float[Steps + 1];
            for (var i = 0; i <= Steps; i++) colors[channel][i] = StopCurve.Evaluate(places, midpoints, values, gradient.Smoothness, Place(i, isReversed));
        }

        for (var i = 0; i <= Steps; i++) alpha[i] = StopCurve.Evaluate(opacityPlaces, opacityMidpoints, opacities, gradient.Smoothness, Place(i, isReversed));
        IsOpaque = gradient.IsOpaque;
    }

    public bool IsOpaque { get; }

    public float GetColor(int channel, double at) => Interpolate(colors[channel], at);

    public float GetAlpha(double at) => Interpolate(alpha, at);

    private static double Place(int step, bool isReversed) => (isReversed ? Steps - step : step) / (double)Steps;

    private static float Interpolate(float[] values, double at)
    {
        // Also where the place is not a number.
        if (!(at > 0)) return values[0];
        if (at >= 1) return values[Steps];
        var place = at * Steps;
        var below = (int)place;
        return values[below] + ((values[below + 1] - values[below]) * (float)(place - below));
    }
}
