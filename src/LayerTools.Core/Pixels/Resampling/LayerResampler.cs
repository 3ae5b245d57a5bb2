using LayerTools.Model;

namespace LayerTools.Pixels.Resampling;

/// <summary>Resamples the channels of one file's layers; can be used from several threads.</summary>
internal sealed class LayerResampler(LayerFile file, PixelReader reader, CanvasScale scale, ResampleFilter filter, CancellationToken cancellation)
{
    /// <summary>The layer's channels of colour and opacity on the new canvas, packed as they were; channels without samples stay as they are.</summary>
    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public IReadOnlyList<Plane> ResampleColors(Layer layer)
    {
        var planes = layer.Planes.Where(plane => plane.Role >= PlaneRole.Alpha).ToList();
        var stored = planes.Where(plane => HasSamples(plane, layer.Bounds)).ToList();
        var alpha = planes.Find(plane => plane.Role == PlaneRole.Alpha);
        if (stored.Count == 0) return planes;
        var area = CreateArea(layer.Bounds);
        var used = stored.Where(plane => plane != alpha).ToList();
        using var alphaRows = alpha is null ? null : reader.OpenRows(layer, alpha);
        var rows = used.ConvertAll(plane => reader.OpenRows(layer, plane));
        using var alphaWriter = alpha is null || !stored.Contains(alpha) ? null : Open(alpha, area);
        var writers = used.ConvertAll(plane => Open(plane, area));
        try
        {
            new ColorResampler(
                area, file.BitDepth, rows.ConvertAll(row => new RowInput(row.ReadRow)), alphaRows is null ? null : alphaRows.ReadRow,
                writers.ConvertAll(writer => new RowOutput(writer.WriteRow)), alphaWriter is null ? null : alphaWriter.WriteRow).Run(cancellation);
            return planes.ConvertAll(plane => plane == alpha ? alphaWriter?.Complete() ?? plane : used.Contains(plane) ? writers[used.IndexOf(plane)].Complete() : plane);
        }
        finally
        {
            foreach (var row in rows) row.Dispose();
            foreach (var writer in writers) writer.Dispose();
        }
    }

    /// <summary>One of the layer's masks on the new canvas.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="plane">The mask's channel.</param>
    /// <exception cref="Errors.LayeredFileException">The channel is damaged, or the file changed on disk.</exception>
    public Plane ResampleMask(Layer layer, Plane plane)
    {
        var bounds = layer.GetPlaneBounds(plane.Role);
        if (!HasSamples(plane, bounds)) return plane;
        var area = CreateArea(bounds);
        var around = plane.Role == PlaneRole.PaintedMask && layer.Mask?.PaintedBounds is not null ? layer.Mask.PaintedDefaultColor : layer.Mask?.DefaultColor ?? 0;
        using var rows = reader.OpenRows(layer, plane);
        using var writer = Open(plane, area);
        MaskResampler.Run(area, file.BitDepth, around / 255f, rows.ReadRow, writer.WriteRow, cancellation);
        return writer.Complete();
    }

    private static bool HasSamples(Plane plane, Bounds bounds) => !bounds.IsEmpty && plane.HasCompressionWord && plane.Data.Length > 0;

    private ScaledArea CreateArea(Bounds bounds) => new(scale, filter, bounds, scale.Map(bounds)!.Value);

    private PlaneWriter Open(Plane plane, ScaledArea area) =>
        new(plane.Role, reader.ReadCompression(plane), area.New.Width, area.New.Height, file.BitDepth, file.Format, file.Spool);
}
