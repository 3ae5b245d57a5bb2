using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Resampling;

namespace LayerTools.Edits;

/// <summary>Resamples all that a file has in pixels, on all processors, with a few rows of each piece in memory.</summary>
internal sealed class ResizePixels(LayerFile file, CanvasScale scale, ResampleFilter filter, CancellationToken cancellation)
{
    private readonly ConcurrentDictionary<Layer, IReadOnlyList<Plane>> colors = new();
    private readonly ConcurrentDictionary<Plane, Plane> masks = new();
    private FileDetail? fileDetail;

    /// <summary>The format's part of the resized file.</summary>
    public FileDetail FileDetail => fileDetail ?? throw new InvalidOperationException("Nothing was resampled yet.");

    /// <summary>A layer's new channels, in the order of the old ones.</summary>
    public IEnumerable<Plane> PlanesOf(Layer layer)
    {
        var next = 0;
        foreach (var plane in layer.Planes) yield return plane.Role >= PlaneRole.Alpha ? colors[layer][next++] : masks[plane];
    }

    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, or the temporary folder is full.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public void Resample()
    {
        using var reader = new PixelReader(file);
        var resampler = new LayerResampler(file, reader, scale, filter, cancellation);

        // The largest first and one at a time, so that no processor is left with a large one at the end.
        var jobs = new List<(long Size, Action Do)> { ((long)file.Width * file.Height, () => fileDetail = file.Detail.Rescale(file, scale, filter, file.Spool, cancellation)) };
        foreach (var layer in file.GetLayers())
        {
            jobs.Add((layer.Bounds.Area, () => colors[layer] = resampler.ResampleColors(layer)));
            foreach (var plane in layer.Planes.Where(plane => plane.Role < PlaneRole.Alpha)) jobs.Add((layer.GetPlaneBounds(plane.Role).Area, () => masks[plane] = resampler.ResampleMask(layer, plane)));
        }

        try
        {
            Parallel.ForEach(Partitioner.Create(jobs.OrderByDescending(job => job.Size).ToList(), EnumerablePartitionerOptions.NoBuffering), new ParallelOptions { CancellationToken = cancellation }, job => job.Do());
        }
        catch (AggregateException errors)
        {
            var all = errors.Flatten().InnerExceptions;
            var first = all.FirstOrDefault(error => error is OperationCanceledException) ?? all[0];
            if (FileAccessErrors.TryDescribe(first, Path.GetTempPath()) is { } described) throw described;
            ExceptionDispatchInfo.Capture(first).Throw();
        }
    }
}
