using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Deliveries;

/// <summary>Takes the fingerprint of a layer's masks, painted and vector ones, apart from where they lie: all places count from the first there is.</summary>
internal sealed class MaskFingerprint
{
    /// <summary>Steps of a path's coordinates in a pixel: programs store them as fractions of the canvas, which cannot say every place exactly.</summary>
    private const double PathSteps = 16;

    /// <summary>The flags that change what a mask shows.</summary>
    private const int LookingFlags = LayerMask.DisabledFlag | LayerMask.InvertedFlag | LayerMask.RenderedFlag;

    private readonly LayerFile file;
    private readonly PixelReader reader;
    private readonly Layer layer;
    private readonly ContentHash hash;
    private readonly CancellationToken cancellation;
    private (int X, int Y)? origin;

    private MaskFingerprint(LayerFile file, PixelReader reader, Layer layer, ContentHash hash, CancellationToken cancellation) =>
        (this.file, this.reader, this.layer, this.hash, this.cancellation) = (file, reader, layer, hash, cancellation);

    /// <summary>The fingerprint and where the masks lie; empty for a layer without masks.</summary>
    public static (string Shape, (int X, int Y) Place) Read(LayerFile file, PixelReader reader, Layer layer, CancellationToken cancellation)
    {
        if (layer.Mask is null && layer.Detail.VectorPath is null) return (string.Empty, default);
        using var hash = new ContentHash();
        var fingerprint = new MaskFingerprint(file, reader, layer, hash, cancellation);
        if (layer.Mask is { } mask) fingerprint.Add(mask);
        if (layer.Detail.VectorPath is { } path) fingerprint.Add(path);
        return (hash.Complete(), fingerprint.origin ?? default);
    }

    private void Add(LayerMask mask)
    {
        AddPainted(PlaneRole.UserMask, mask.Bounds, mask.DefaultColor, mask.Flags & LookingFlags);
        if (mask.PaintedBounds is { } bounds) AddPainted(PlaneRole.PaintedMask, bounds, mask.PaintedDefaultColor, mask.PaintedFlags & LookingFlags);
        foreach (var density in new[] { mask.UserDensity, mask.VectorDensity }) hash.Add(density ?? byte.MaxValue);
        foreach (var feather in new[] { mask.UserFeather, mask.VectorFeather }) hash.Add(Step(feather ?? 0));
    }

    private void AddPainted(PlaneRole role, Bounds bounds, byte plain, int flags)
    {
        hash.Add((int)role);
        hash.Add(plain);
        hash.Add(flags);

        // What stores no samples is plain all over.
        if (bounds.IsEmpty || layer.FindPlane(role) is not { Data.Length: > 0 }) return;
        Bounds differing;
        using (var rows = new SampleRows(file, reader, layer, role, bounds)) differing = rows.FindDiffering(bounds, plain, cancellation);
        if (differing.IsEmpty) return;
        origin ??= (differing.Left, differing.Top);
        foreach (var number in new[] { differing.Left - origin.Value.X, differing.Top - origin.Value.Y, differing.Width, differing.Height }) hash.Add(number);
        using var samples = new SampleRows(file, reader, layer, role, bounds);
        samples.Skip(differing.Top - bounds.Top);
        for (var row = differing.Top; row < differing.Bottom; row++)
        {
            cancellation.ThrowIfCancellationRequested();
            hash.Add(samples.ReadNext(), (differing.Left - bounds.Left) * samples.SampleBytes, differing.Width * samples.SampleBytes);
        }
    }

    private void Add(VectorPath vector)
    {
        hash.Add((vector.IsFilledWhenEmpty ? 1 : 0) | (vector.IsInverted ? 2 : 0) | (vector.IsDisabled ? 4 : 0));
        foreach (var outline in vector.Outlines)
        {
            hash.Add((((int?)outline.Operation ?? -1) * 2) + (outline.IsClosed ? 1 : 0));
            foreach (var knot in outline.Knots)
            {
                Add(knot.InX, knot.InY);
                Add(knot.X, knot.Y);
                Add(knot.OutX, knot.OutY);
            }
        }
    }

    private void Add(double x, double y)
    {
        var (column, row) = (Step(x * file.Width), Step(y * file.Height));
        origin ??= ((int)Math.Round(column / PathSteps), (int)Math.Round(row / PathSteps));
        hash.Add(column - (int)(origin.Value.X * PathSteps));
        hash.Add(row - (int)(origin.Value.Y * PathSteps));
    }

    private static int Step(double place) => (int)Math.Round(Math.Max(-1e8, Math.Min(1e8, place * PathSteps)));
}
