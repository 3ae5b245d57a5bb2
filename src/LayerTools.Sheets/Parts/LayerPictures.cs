using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Parts;

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
        // An alpha channel that stores nothing is transparent throughout, however large its rectangle says it is.
        if (part.FindPlane(PlaneRole.Alpha) is { Data.Length: 0 }) return new Raster(width, height);
        using var rows = new PartRows(file, reader, part, converter ??= reader.CreateConverter());
        var reducer = new AreaReducer(bounds.Width, bounds.Height, width, height);
        for (var y = bounds.Top; y < bounds.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            var opacity = rows.ReadOpacity();
            if (IsBlank(opacity))
            {
                rows.SkipColors();
                reducer.AddBlankRow();
            }
            else
            {
                var colors = rows.ReadColors();
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

    private static string PlaceOf(Layer part) => $"layer '{part.LayerPath}'";
}
