using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels.Colors;

namespace LayerTools.Pixels;

/// <summary>
/// Unpacks channels of one file's layers for the length of one operation. Can be used from several threads; each
/// <see cref="PlaneRows"/> belongs to one.
/// </summary>
internal sealed class PixelReader(LayerFile file, ReadLimits? limits = null) : IDisposable
{
    /// <summary>The longest array the runtime makes.</summary>
    private const long LongestArray = 0x7FFFFFC7;

    private const long LargestProfile = 16 << 20;

    private readonly OpenedSources opened = new();
    private readonly ReadLimits limits = limits ?? ReadLimits.Default;

    /// <summary>Whether a byte of each channel is not yet what a screen shows.</summary>
    public bool NeedsConversion => file.ColorMode is not (ColorMode.Rgb or ColorMode.Grayscale);

    /// <summary>
    /// The rows of a layer's channel; null if the layer has no such channel. A channel that stores no samples reads as 0 for
    /// colours and alpha (nothing is painted) and as the mask's default colour for masks.
    /// </summary>
    /// <exception cref="LayeredFileException">The channel is damaged, or the file changed on disk.</exception>
    public PlaneRows? OpenRows(Layer layer, PlaneRole role) => layer.FindPlane(role) is { } plane ? OpenRows(layer, plane) : null;

    /// <summary>The rows of one of a layer's channels, see <see cref="OpenRows(Layer, PlaneRole)"/>.</summary>
    public PlaneRows OpenRows(Layer layer, Plane plane)
    {
        var blank = plane.Role switch
        {
            PlaneRole.UserMask => layer.Mask?.DefaultColor ?? 0,
            PlaneRole.PaintedMask => layer.Mask?.PaintedDefaultColor ?? 0,
            _ => (byte)0,
        };
        return PlaneRows.Open(plane, layer.GetPlaneBounds(plane.Role), file.BitDepth, file.Format, blank, opened, PlanePlace.Of(layer, plane));
    }

    /// <summary>How a channel is packed.</summary>
    public Compression ReadCompression(Plane plane) => (Compression)plane.ReadCompressionWord(opened);

    /// <summary>All samples of a layer's channel, rows from the top; null if the layer has no such channel.</summary>
    /// <exception cref="LayeredFileException">The channel is damaged or too large, or the file changed on disk.</exception>
    public byte[]? ReadPlane(Layer layer, PlaneRole role)
    {
        using var rows = OpenRows(layer, role);
        if (rows is null) return null;
        var samples = Allocate(layer, rows.RowBytes, rows.Height, () => new byte[rows.RowBytes * rows.Height]);
        for (var y = 0; y < rows.Height; y++) rows.ReadRow(samples.AsSpan(y * rows.RowBytes, rows.RowBytes));
        return samples;
    }

    /// <summary>
    /// A layer's own pixels without its masks, 8 bits a sample, as large as the layer's rectangle. Layers without alpha are opaque. At 32 bits
    /// the colours are linear light and are encoded as sRGB (IEC 61966-2-1).
    /// </summary>
    /// <exception cref="LayeredFileException">A channel is damaged, the layer is too large, or the colours cannot be turned to RGB.</exception>
    public Raster ReadRaster(Layer layer)
    {
        SampleConverter.EnsureSupported(file, SectionOf(layer));
        var bounds = layer.IsGroup || layer.Bounds.IsEmpty ? Bounds.Empty : layer.Bounds;
        var raster = Allocate(layer, 4 * ((long)bounds.Right - bounds.Left), (long)bounds.Bottom - bounds.Top, () => new Raster(bounds.Width, bounds.Height));
        var opaque = layer.FindPlane(PlaneRole.Alpha) is null;
        if (NeedsConversion)
        {
            Convert(layer, raster);
        }
        else if (file.ColorMode == ColorMode.Grayscale)
        {
            Fill(layer, PlaneRole.Color0, raster, [0, 1, 2]);
        }
        else
        {
            Fill(layer, PlaneRole.Color0, raster, [0]);
            Fill(layer, PlaneRole.Color1, raster, [1]);
            Fill(layer, PlaneRole.Color2, raster, [2]);
        }

        if (opaque) SampleConverter.Spread(255, raster.Pixels, 3);
        else Fill(layer, PlaneRole.Alpha, raster, [3]);
        return raster;
    }

    /// <summary>The file's colour profile; null if it has none.</summary>
    /// <exception cref="LayeredFileException">The file changed on disk.</exception>
    public ColorProfile? ReadProfile() =>
        file.Detail.ColorProfile is { Length: <= LargestProfile } profile ? new ColorProfile(profile.ReadAll(opened)) : null;

    /// <summary>Turns rows of the file's colours to RGB; it can be used from several threads.</summary>
    /// <exception cref="LayeredFileException">The file changed on disk.</exception>
    public ColorConverter CreateConverter() => ColorConverter.Create(file, this);

    /// <summary>The bytes of the palette; empty if there is none.</summary>
    public byte[] ReadPalette() => file.Detail.Palette?.ReadAll(opened) ?? [];

    public void Dispose() => opened.Dispose();

    private static string SectionOf(Layer layer) => $"layer '{layer.LayerPath}'";

    private void Fill(Layer layer, PlaneRole role, Raster raster, ReadOnlySpan<int> places)
    {
        if (raster.Width == 0 || raster.Height == 0) return;
        using var rows = OpenRows(layer, role);
        if (rows is null) return;
        var samples = new byte[rows.RowBytes];
        var bytes = new byte[rows.Width];
        for (var y = 0; y < rows.Height; y++)
        {
            rows.ReadRow(samples);
            SampleConverter.ToBytes(samples, bytes, rows.BitDepth, isLight: role >= PlaneRole.Color0);
            foreach (var place in places) SampleConverter.Spread(bytes, raster.Row(y), place);
        }
    }

    private void Convert(Layer layer, Raster raster)
    {
        if (raster.Width == 0 || raster.Height == 0) return;
        using var rows = new ColorRows(this, layer, raster.Width, CreateConverter());
        for (var y = 0; y < raster.Height; y++) rows.ReadNext(raster.Row(y));
    }

    private T Allocate<T>(Layer layer, long rowBytes, long height, Func<T> create)
    {
        // As a floating-point number, since the product of two damaged numbers may not fit into a long.
        var bytes = (double)rowBytes * height;
        var refusal = FormattableString.Invariant($"The limit is {limits.MemoryMegabytes} MB.");
        if (bytes <= Math.Min((long)limits.MemoryMegabytes << 20, LongestArray))
        {
            try
            {
                return create();
            }
            catch (OutOfMemoryException)
            {
                refusal = "The machine has no memory left for it.";
            }
        }

        throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, SectionOf(layer), -1,
            FormattableString.Invariant($"Its samples take {Math.Ceiling(bytes / (1 << 20)):0} MB unpacked. {refusal}"),
            FormattableString.Invariant($"Raise {nameof(ReadLimits.MemoryMegabytes)} (at most 2047), or cut the layer."));
    }
}
