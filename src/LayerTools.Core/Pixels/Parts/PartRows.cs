using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing.Masks;

namespace LayerTools.Pixels.Parts;

/// <summary>
/// The rows of a layer as bytes of red, green, blue and opacity, one after the other from the top of its rectangle. Masks count, the layer's own
/// opacity does not. Colours of rows that nobody asks for are passed over without being unpacked, and memory goes with the layer's width.
/// </summary>
internal sealed class PartRows : IDisposable
{
    private readonly LayerFile file;
    private readonly Layer part;
    private readonly ByteRows alpha;
    private readonly PartColors? colors;
    private readonly MaskRows? mask;
    private int nextRow;

    /// <param name="file">The file.</param>
    /// <param name="reader">Its open channels.</param>
    /// <param name="part">One of its layers that is no group.</param>
    /// <param name="converter">Turns colours to RGB; null to read opacity only.</param>
    /// <param name="masked">Whether masks count.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, or the layer is larger than any canvas.</exception>
    public PartRows(LayerFile file, PixelReader reader, Layer part, ColorConverter? converter, bool masked = true)
    {
        (this.file, this.part) = (file, part);
        EnsureReasonable(part.Bounds);
        alpha = new ByteRows(reader.OpenRows(part, PlaneRole.Alpha), part.Bounds.Width, missing: byte.MaxValue, isLight: false);
        if (converter is not null) colors = reader.NeedsConversion ? new ConvertedColors(reader, part, converter) : new StoredColors(reader, part, isGrey: file.ColorMode == ColorMode.Grayscale);
        if (masked) mask = OpenMask(reader);
    }

    /// <summary>The canvas row that <see cref="ReadOpacity"/> gives next.</summary>
    public int NextY => part.Bounds.Top + nextRow;

    /// <summary>The opacity of the next row; valid until the next call. Either <see cref="ReadColors"/> or <see cref="SkipColors"/> has to follow where colours are read.</summary>
    public ReadOnlySpan<byte> ReadOpacity()
    {
        var row = alpha.ReadNext();
        mask?.Apply(NextY, row);
        nextRow++;
        return row;
    }

    /// <summary>The colours of the row whose opacity was read last; valid until the next call.</summary>
    public PartColors ReadColors()
    {
        colors!.ReadNext();
        return colors;
    }

    /// <summary>Passes over the colours of the row whose opacity was read last.</summary>
    public void SkipColors() => colors!.SkipNext();

    public void Dispose()
    {
        alpha.Dispose();
        colors?.Dispose();
        mask?.Dispose();
    }

    private MaskRows? OpenMask(PixelReader reader)
    {
        if (LayerMasks.Find(part).Stored is not { } stored) return null;
        if (stored.Bounds.IsEmpty || part.FindPlane(stored.Role) is null)
        {
            return new MaskRows(stored with { Bounds = Bounds.Empty }, part.Bounds, new ByteRows(null, 0, stored.DefaultColor, isLight: false));
        }

        EnsureReasonable(stored.Bounds);
        return new MaskRows(stored, part.Bounds, new ByteRows(reader.OpenRows(part, stored.Role), stored.Bounds.Width, stored.DefaultColor, isLight: false));
    }

    private void EnsureReasonable(Bounds bounds)
    {
        if (bounds.Width <= AreaReducer.LargestSide && bounds.Height <= AreaReducer.LargestSide) return;
        throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"layer '{part.LayerPath}'", -1,
            FormattableString.Invariant($"A rectangle of it has a side of more than {AreaReducer.LargestSide} px."), "Cut the layer to what is painted.");
    }
}
