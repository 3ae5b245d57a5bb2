using LayerTools.Model.Adjustments;

namespace LayerTools.Pixels.Compositing.Adjustments;

/// <summary>
/// The tone curve of brightness and contrast. No specification gives it; measured on five settings in files with a stored picture. Straight form:
/// contrast c turns the line around its middle with the slope 1 + c for c below 0 (measured) and 1 / (1 − c) above (from memory), then brightness is added.
/// Bent form: first brightness, a straight line of slope e^(0.0063 b) from black that bends into white, and for darker the inverse of that; then
/// contrast, two parabolas that meet in the middle, y = x − 3/4 c x (1 − 2x) and its mirror image. On 966 levels in four settings the bent form is off by
/// about half a level in the mean and by 5 at most, where dark settings rise steeply to white.
/// </summary>
internal sealed class BrightnessTone
{
    private const double StopsPerUnit = 0.0063;
    private const double Percent = 100;
    private readonly BrightnessContrast adjustment;
    private readonly double contrast;
    private readonly Bend bend;

    public BrightnessTone(BrightnessContrast adjustment)
    {
        this.adjustment = adjustment;
        contrast = adjustment.Contrast / Percent;
        bend = new Bend(Math.Exp(StopsPerUnit * Math.Abs(adjustment.Brightness)));
    }

    public double Find(double value)
    {
        if (adjustment.IsStraight) return FindStraight(value);
        var bright = adjustment.Brightness == 0 ? value : adjustment.Brightness > 0 ? bend.Lighten(value) : bend.Darken(value);
        return bright <= 0.5 ? Contrast(bright) : 1 - Contrast(1 - bright);
    }

    private double FindStraight(double value)
    {
        var middle = adjustment.Middle / (double)byte.MaxValue;
        var slope = contrast < 0 ? 1 + contrast : 1 / Math.Max(1 - contrast, 1.0 / byte.MaxValue);
        return ((value - middle) * slope) + middle + (adjustment.Brightness / (double)byte.MaxValue);
    }

    private double Contrast(double dark) => dark - (0.75 * contrast * dark * (1 - (2 * dark)));

    /// <summary>
    /// A line from black that bends into white. The bend is a conic section: it leaves the line at the output <see cref="Start"/> and reaches white with
    /// a slope of 0.52 s^−3.26, its weight is 0.91 + 0.66 (s − 1).
    /// </summary>
    private sealed class Bend
    {
        private const double Start = 0.515;
        private readonly double slope;
        private readonly double corner;
        private readonly double weight;

        public Bend(double slope)
        {
            this.slope = slope;
            weight = 0.91 + (0.66 * (slope - 1));
            var endSlope = 0.52 * Math.Pow(slope, -3.26);
            corner = (1 - endSlope) / (slope - endSlope);
        }

        public double Lighten(double value) => value <= Start / slope ? slope * value : Cross(value, Start / slope, corner, Start, slope * corner);

        public double Darken(double value) => value <= Start ? value / slope : Cross(value, Start, slope * corner, Start / slope, corner);

        /// <summary>The conic's other coordinate at <paramref name="value"/>, from the coordinates of its start and its corner; it ends at 1, 1.</summary>
        private double Cross(double value, double start, double bent, double otherStart, double otherBent)
        {
            if (value >= 1) return 1;
            var (first, middle, last) = (start - value, weight * (bent - value), 1 - value);
            var ratio = (Math.Sqrt((middle * middle) - (first * last)) - middle) / last;
            return (otherStart + (2 * weight * ratio * otherBent) + (ratio * ratio)) / (1 + (2 * weight * ratio) + (ratio * ratio));
        }
    }
}
