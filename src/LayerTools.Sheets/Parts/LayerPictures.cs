using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Sheets.Parts;

/// <summary>Draws layers of a file row by row, so that memory goes with a layer's width and not with its area.</summary>
internal sealed class LayerPictures : IPartPictures
{
    private readonly LayerFile file;
    private readonly PixelReader reader;
    private ColorConverter? converter;

    public LayerPictures(LayerFile file)
    {
        this.file = file;
        reader = new PixelReader(file);
    }

    public Raster Draw(Layer part, int width, int height, CancellationToken cancellation)
    {
        SampleConverter.EnsureSupported(file, PlaceOf(part));
        var bounds = part.Bounds;
        EnsureReasonable(part, bounds);

        // An alpha channel that stores nothing is transparent throughout, however large its rectangle says it is.
        if (part.FindPlane(PlaneRole.Alpha) is { Data.Length: 0 }) return new Raster(width, height);
        var reducer = new AreaReducer(bounds.Width, bounds.Height, width, height);
        using var alpha = new ByteRows(reader.OpenRows(part, PlaneRole.Alpha), bounds.Width, missing: 255, isLight: false);
        using var colors = OpenColors(part);
        using var mask = OpenMask(part);
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            var opacity = alpha.ReadNext();
            mask?.Apply(y, opacity);
            if (IsBlank(opacity))
            {
                colors.SkipNext();
                reducer.AddBlankRow();
            }
            else
            {
                colors.ReadNext();
                reducer.AddRow(colors.Red, colors.Green, colors.Blue, opacity);
            }
        }

        return reducer.Finish();
    }

    public void Dispose() => reader.Dispose();

    private static bool IsBlank(ReadOnlySpan<byte> opacity)
    {
#if NET8_0_OR_GREATER
        return opacity.IndexOfAnyExcept((byte)0) < 0;
#else
        foreach (var sample in opacity)
        {
            if (sample != 0) return false;
        }

        return true;
#endif
    }

    private PartColors OpenColors(Layer part) => reader.NeedsConversion
        ? new ConvertedColors(reader, part, converter ??= reader.CreateConverter())
        : new StoredColors(reader, part, isGrey: file.ColorMode == ColorMode.Grayscale);

    private MaskRows? OpenMask(Layer part)
    {
        if (LayerMasks.Find(part).Stored is not { } mask) return null;
        if (mask.Bounds.IsEmpty || part.FindPlane(mask.Role) is null)
        {
            return new MaskRows(mask with { Bounds = Bounds.Empty }, part.Bounds, new ByteRows(null, 0, mask.DefaultColor, isLight: false));
        }

        EnsureReasonable(part, mask.Bounds);
        return new MaskRows(mask, part.Bounds, new ByteRows(reader.OpenRows(part, mask.Role), mask.Bounds.Width, mask.DefaultColor, isLight: false));
    }

    private void EnsureReasonable(Layer part, Bounds bounds)
    {
        if (bounds.Width <= AreaReducer.LargestSide && bounds.Height <= AreaReducer.LargestSide) return;
        throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, PlaceOf(part), -1,
            FormattableString.Invariant($"A rectangle of it has a side of more than {AreaReducer.LargestSide} px."), "Cut the layer to what is painted.");
    }

    private static string PlaceOf(Layer part) => $"layer '{part.LayerPath}'";
}
