using LayerTools.Model;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Measures.Symmetry;

/// <summary>Measures one pair, one central part or the figure.</summary>
internal sealed class SymmetryMeasurement(LayerFile file, PartPainter painter, PartRoles roles, CancellationToken cancellation)
{
    public LayerSymmetry Measure(SymmetryItem item)
    {
        var result = new LayerSymmetry
        {
            Kind = item.Kind,
            LayerPath = item.Part?.LayerPath ?? string.Empty,
            LayerNumber = item.Part?.LayerNumber,
            OppositePath = item.Opposite?.LayerPath ?? string.Empty,
            OppositeNumber = item.Opposite?.LayerNumber,
            CanvasAxis = file.Axis,
            FilePath = file.Path,
            Note = string.Empty,
        };
        if (item is { Kind: SymmetryKind.Pair, Opposite: null }) return result with { Note = "Its opposite is nowhere in the file." };
        foreach (var layer in new[] { item.Part, item.Opposite }.OfType<Layer>())
        {
            if (CompositorSupport.FindContentReason(layer) is { } reason) return result with { Note = $"{layer.LayerPath} cannot be drawn: {reason}." };
        }

        var one = item.Part is { } part ? painter.Draw(part) : painter.DrawFigure(roles.IsShown);
        var other = item.Opposite is { } opposite ? painter.Draw(opposite) : one;
        if (one.Bounds.IsEmpty || other.Bounds.IsEmpty) return result with { Note = $"Nothing is painted on {(one.Bounds.IsEmpty ? item.Part : item.Opposite)?.LayerPath ?? "any visible part"}." };
        return Compare(result, one, other);
    }

    private LayerSymmetry Compare(LayerSymmetry result, PaintedPart one, PaintedPart other)
    {
        var pair = new MirrorPair(one.Coverage, other.Coverage);
        var (area, otherArea) = (one.Coverage.Sum(), other.Coverage.Sum());
        var levels = new MirrorLevels(pair);
        var axis = AxisSearch.FindDoubled(levels, cancellation);
        var tilt = axis is { } upright ? TiltSearch.Find(levels, upright, cancellation) : new Tilt(null, null, "No upright axis makes the two meet.");
        cancellation.ThrowIfCancellationRequested();
        result = result with
        {
            Iou = FindIou(file.Width),
            ColorDifference = ColorMirror.Measure(one, other, file.Width) is { } difference ? Math.Round(difference, 2) : null,
            Axis = axis is { } doubled ? Math.Round(doubled / 2, 2) : null,
            BestIou = axis is { } best ? FindIou((int)Math.Round(best)) : null,
            Angle = tilt.Degrees is { } degrees ? Math.Round(degrees, 2) + 0.0 : null,
            AngleIou = tilt.Agreement is { } agreement ? Math.Round(100 * agreement, 1) : null,
            Note = tilt.Note,
        };
        return pair.IsOne ? result : result with
        {
            WidthDifference = one.Bounds.Width - other.Bounds.Width,
            HeightDifference = one.Bounds.Height - other.Bounds.Height,
            AreaDifference = Math.Round(100 * (area - otherArea) / Math.Max(area, otherArea), 2) + 0.0,
        };

        double FindIou(int doubledAxis)
        {
            var shared = pair.SumMinima(doubledAxis);
            return ToPercent(shared, area + otherArea - shared);
        }
    }

    /// <summary>To a hundredth; but 0 and 100 are said only where nothing and everything agrees.</summary>
    private static double ToPercent(double shared, double all)
    {
        if (shared == 0 || shared == all) return shared == 0 ? 0 : 100;
        return Math.Min(Math.Max(Math.Round(100 * shared / all, 2), 0.01), 99.99);
    }
}
