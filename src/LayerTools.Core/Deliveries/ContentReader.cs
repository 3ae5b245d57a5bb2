using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>
/// Finds out what layers hold. The fingerprint of pixels is taken of the size of the painted rectangle and of its rows: opacity, then each colour of the pixels that
/// are not fully transparent, in the file's own samples. So it does not depend on packing, on filling, or on how far the stored rectangle reaches.
/// Can be used from several threads.
/// </summary>
internal sealed class ContentReader : IDisposable
{
    /// <summary>Steps of a path's coordinates in a pixel: programs store them as fractions of the canvas, which cannot say every place exactly.</summary>
    private const double PathSteps = 16;

    private readonly LayerFile file;
    private readonly PixelReader reader;
    private readonly OpenedSources opened = new();
    private readonly Lazy<ColorConverter> converter;
    private readonly CancellationToken cancellation;

    public ContentReader(LayerFile file, CancellationToken cancellation = default)
    {
        this.file = file;
        this.cancellation = cancellation;
        reader = new PixelReader(file);
        converter = new Lazy<ColorConverter>(reader.CreateConverter);
    }

    /// <summary>What a layer holds.</summary>
    /// <param name="layer">A layer or group of the file.</param>
    /// <param name="withLook">Whether to make its look too, where its colours can be turned to RGB.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public PartContent Read(Layer layer, bool withLook)
    {
        var painted = layer.IsGroup || layer.Planes.Count == 0 ? Bounds.Empty : FindPainted(layer);
        return new PartContent
        {
            Painted = painted,
            Pixels = painted.IsEmpty ? HashLiveContent(layer) : HashPixels(layer, painted),
            Mask = HashMasks(layer, painted),
            Look = withLook && !painted.IsEmpty && CanPaint ? PartLook.Create(Paint(layer, painted, PartLook.Side)) : null,
        };
    }

    /// <summary>The fingerprint of a layer's effects; empty for one without any.</summary>
    public string ReadEffects(Layer layer) => Hash(layer.Detail.EffectContent);

    /// <summary>Whether colours of the file can be turned to RGB, so that pictures can be made and compared.</summary>
    public bool CanPaint => ColorConverter.CanConvert(file);

    /// <summary>The rows of a layer without its masks.</summary>
    public PartRows OpenRows(Layer layer) => new(file, reader, layer, converter.Value, masked: false);

    /// <summary>A coarse picture of a layer without its masks.</summary>
    /// <param name="layer">A layer that is no group.</param>
    /// <param name="shown">The rectangle to show, as if the layer stood where it stands.</param>
    /// <param name="side">Blocks along each side.</param>
    public CoarsePicture Paint(Layer layer, Bounds shown, int side)
    {
        var painter = new CoarsePainter(shown, side);
        using var rows = OpenRows(layer);
        while (rows.NextY < Math.Min(layer.Bounds.Bottom, shown.Bottom))
        {
            cancellation.ThrowIfCancellationRequested();
            var y = rows.NextY;
            var opacity = rows.ReadOpacity();
            if (y < shown.Top) rows.SkipColors();
            else painter.Add(y, layer.Bounds.Left, opacity, rows.ReadColors());
        }

        return painter.Complete();
    }

    public void Dispose()
    {
        reader.Dispose();
        opened.Dispose();
    }

    private Bounds FindPainted(Layer layer)
    {
        if (layer.Bounds.IsEmpty || layer.FindPlane(PlaneRole.Alpha) is null) return layer.Bounds.IsEmpty ? Bounds.Empty : layer.Bounds;
        using var rows = new SampleRows(reader, layer, PlaneRole.Alpha, layer.Bounds, file.BitDepth);
        return FindDiffering(rows, layer.Bounds, 0);
    }

    /// <summary>The smallest rectangle that holds all samples that are not made of a byte.</summary>
    private Bounds FindDiffering(SampleRows rows, Bounds bounds, byte plain)
    {
        var differing = Bounds.Empty;
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            var row = rows.ReadNext();
            var first = FindFirst(row, plain);
            if (first < 0) continue;
            var last = row.Length - 1;
            while (row[last] == plain) last--;
            differing = differing.Union(new Bounds(bounds.Left + (first / rows.SampleBytes), y, bounds.Left + (last / rows.SampleBytes) + 1, y + 1));
        }

        return differing;
    }

    private static int FindFirst(byte[] row, byte plain)
    {
#if NET8_0_OR_GREATER
        return row.AsSpan().IndexOfAnyExcept(plain);
#else
        return Array.FindIndex(row, value => value != plain);
#endif
    }

    private string HashPixels(Layer layer, Bounds painted)
    {
        using var hash = new ContentHash();
        hash.Add((int)file.ColorMode);
        hash.Add(file.BitDepth);
        hash.Add(painted.Width);
        hash.Add(painted.Height);
        var roles = new[] { PlaneRole.Alpha }.Concat(layer.Planes.Select(plane => plane.Role).Where(role => role >= PlaneRole.Color0).OrderBy(role => role));
        var channels = roles.Select(role => new SampleRows(reader, layer, role, layer.Bounds, file.BitDepth)).ToList();
        try
        {
            foreach (var channel in channels) channel.Skip(painted.Top - layer.Bounds.Top);
            var sampleBytes = channels[0].SampleBytes;
            var (start, count) = ((painted.Left - layer.Bounds.Left) * sampleBytes, painted.Width * sampleBytes);
            for (var y = painted.Top; y < painted.Bottom; y++)
            {
                cancellation.ThrowIfCancellationRequested();
                var alpha = channels[0].ReadNext();
                hash.Add(alpha, start, count);
                foreach (var channel in channels.Skip(1))
                {
                    var row = channel.ReadNext();
                    Blank(row.AsSpan(start, count), alpha.AsSpan(start, count), sampleBytes);
                    hash.Add(row, start, count);
                }
            }
        }
        finally
        {
            foreach (var channel in channels) channel.Dispose();
        }

        return hash.Complete();
    }

    /// <summary>Clears the samples of a colour where nothing is painted: programs keep there whatever they like.</summary>
    private static void Blank(Span<byte> color, ReadOnlySpan<byte> alpha, int sampleBytes)
    {
        for (var x = 0; x < alpha.Length;)
        {
#if NET8_0_OR_GREATER
            var next = alpha.Slice(x).IndexOf((byte)0);
            if (next < 0) return;
            x = (x + next) / sampleBytes * sampleBytes;
#endif
            var any = 0;
            for (var i = 0; i < sampleBytes; i++) any |= alpha[x + i];
            if (any == 0) color.Slice(x, sampleBytes).Clear();
            x += sampleBytes;
        }
    }

    private string HashLiveContent(Layer layer) => layer.Kind is LayerKind.Fill or LayerKind.Adjustment or LayerKind.Shape ? Hash(layer.Detail.LiveContent) : string.Empty;

    private string Hash(IReadOnlyList<ByteSource> sources)
    {
        if (sources.Count == 0) return string.Empty;
        using var hash = new ContentHash();
        foreach (var source in sources) hash.Add(source, opened);
        return hash.Complete();
    }

    private string HashMasks(Layer layer, Bounds painted)
    {
        var mask = layer.Mask;
        var path = layer.Detail.VectorPath;
        if (mask is null && path is null) return string.Empty;
        using var hash = new ContentHash();
        if (mask is not null)
        {
            const int LookingFlags = LayerMask.DisabledFlag | LayerMask.InvertedFlag | LayerMask.RenderedFlag;
            AddMask(PlaneRole.UserMask, mask.Bounds, mask.DefaultColor, mask.Flags & LookingFlags);
            if (mask.PaintedBounds is { } bounds) AddMask(PlaneRole.PaintedMask, bounds, mask.PaintedDefaultColor, mask.PaintedFlags & LookingFlags);
            foreach (var density in new[] { mask.UserDensity, mask.VectorDensity }) hash.Add(density ?? byte.MaxValue);
            foreach (var feather in new[] { mask.UserFeather, mask.VectorFeather }) hash.Add((int)Math.Min(Math.Round((feather ?? 0) * PathSteps), int.MaxValue));
        }

        if (path is not null) AddPath(path);
        return hash.Complete();

        void AddMask(PlaneRole role, Bounds bounds, byte plain, int flags)
        {
            hash.Add((int)role);
            hash.Add(plain);
            hash.Add(flags);
            if (bounds.IsEmpty || layer.FindPlane(role) is null) return;
            Bounds differing;
            using (var rows = new SampleRows(reader, layer, role, bounds, file.BitDepth)) differing = FindDiffering(rows, bounds, plain);
            if (differing.IsEmpty) return;
            foreach (var edge in new[] { differing.Left - painted.Left, differing.Top - painted.Top, differing.Width, differing.Height }) hash.Add(edge);
            using var samples = new SampleRows(reader, layer, role, bounds, file.BitDepth);
            samples.Skip(differing.Top - bounds.Top);
            for (var y = differing.Top; y < differing.Bottom; y++) hash.Add(samples.ReadNext(), (differing.Left - bounds.Left) * samples.SampleBytes, differing.Width * samples.SampleBytes);
        }

        void AddPath(VectorPath vector)
        {
            hash.Add((vector.IsFilledWhenEmpty ? 1 : 0) | (vector.IsInverted ? 2 : 0) | (vector.IsDisabled ? 4 : 0));
            foreach (var outline in vector.Outlines)
            {
                hash.Add((((int?)outline.Operation ?? -1) * 2) + (outline.IsClosed ? 1 : 0));
                foreach (var knot in outline.Knots)
                {
                    foreach (var x in new[] { knot.InX, knot.X, knot.OutX }) hash.Add(Step((x * file.Width) - painted.Left));
                    foreach (var y in new[] { knot.InY, knot.Y, knot.OutY }) hash.Add(Step((y * file.Height) - painted.Top));
                }
            }
        }
    }

    private static int Step(double place) => (int)Math.Round(Math.Max(-1e8, Math.Min(1e8, place * PathSteps)));
}
