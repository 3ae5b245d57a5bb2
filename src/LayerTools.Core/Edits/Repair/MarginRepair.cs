using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Edits.Repair;

/// <summary>Cuts a layer down to the rectangle of what is painted on it. What lies inside stays as it is, to the bit.</summary>
internal static class MarginRepair
{
    /// <summary>Cuts a layer.</summary>
    /// <param name="work">The layer's file.</param>
    /// <param name="layer">The layer.</param>
    /// <param name="faintest">Pixels of more alpha than this are kept, 0 to 254 of 255; 0 cuts off nothing but clear pixels.</param>
    /// <param name="cancellation">Ends the work early.</param>
    public static void Cut(RepairWork work, Layer layer, byte faintest, CancellationToken cancellation)
    {
        if (work.IsCut(layer)) return;
        if (FindObstacle(layer) is { } obstacle)
        {
            work.Leave($"'{layer.LayerPath}' is left as it is, since it {obstacle}.");
            return;
        }

        var kept = AlphaBox.Find(work.Reader, layer, faintest, cancellation);
        if (kept.IsEmpty || kept == layer.Bounds) return;
        var planes = layer.Planes.Select(plane => Cut(work, layer, plane, kept, cancellation)).ToList();
        work.Add(new EditStep(layer, nameof(Bounds), layer.Bounds.ToString(), kept.ToString()), () =>
        {
            layer.Bounds = kept;
            layer.Planes = planes;
        });
        work.ChangesPicture |= faintest > 0;
    }

    /// <summary>Why cutting might show, or might take away what is only hidden; null if nothing speaks against it.</summary>
    private static string? FindObstacle(Layer layer) => layer switch
    {
        { Kind: not LayerKind.Pixel } => "is not made of plain pixels",
        { HasMask: true } => "has a mask, which may hide what would be lost",
        _ when (layer.Detail.Features & LayerFeatures.Effects) != 0 => "has effects, which go by its edge",
        { BlendMode: BlendMode.Dissolve } => "is dissolved, which shows faint pixels in full",
        _ => null,
    };

    private static Plane Cut(RepairWork work, Layer layer, Plane plane, Bounds kept, CancellationToken cancellation)
    {
        if (!plane.HasCompressionWord || plane.Data.Length == 0) return plane;
        using var rows = work.Reader.OpenRows(layer, plane);
        rows.SkipRows(kept.Top - layer.Bounds.Top);
        var row = new byte[rows.RowBytes];
        var start = PlaneRows.GetRowBytes(kept.Left - layer.Bounds.Left, rows.BitDepth);
        return PlanePacker.Pack(plane.Role, work.Reader.ReadCompression(plane), kept.Width, kept.Height, rows.BitDepth, work.File.Format, ReadCut, work.File.Spool);

        void ReadCut(int y, Span<byte> target)
        {
            cancellation.ThrowIfCancellationRequested();
            rows.ReadRow(row);
            row.AsSpan(start, target.Length).CopyTo(target);
        }
    }
}
