using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Formats.Psd;

/// <summary>Makes the merged picture and the thumbnail for a save: kept, drawn anew, or moved with the canvas.</summary>
internal sealed class PsdPictureDrawer(LayerFile file, OpenedSources opened, SpoolFile spool)
{
    // Version 4, then one byte that says whether the merged picture is real (resource 1057).
    private const int RealPictureOffset = 4;
    private readonly PsdFileDetail detail = (PsdFileDetail)file.Detail;

    /// <summary>What the user should know, as sentences.</summary>
    public List<string> Warnings { get; } = [];

    public PsdPicture Draw()
    {
        var isMoved = detail.HasMovedCanvas(file);
        if (!file.IsPictureStale && !isMoved) return PsdPicture.Keep(detail);
        var unsupported = CompositorSupport.FindNotDrawn(file);
        if (unsupported.Count == 0)
        {
            if (CompositorSupport.FindNotes(file) is { Count: > 0 } notes) Warnings.Add($"The merged picture that other programs show as a preview was redrawn and may differ a little from what they draw themselves ({Shorten(notes)}).");
            return DrawAnew();
        }

        // A picture that only moves with its canvas stays as true as it was.
        var isFlat = file.LayerCount == 0;
        if (!isFlat) Warnings.Add(Explain(unsupported));
        var merged = isMoved ? Move() : [detail.MergedPicture];
        return new PsdPicture(merged, isFlat ? [] : FlagPicture(isReal: false));
    }

    private static string Explain(IReadOnlyList<string> unsupported)
    {
        return $"The merged picture that other programs show as a preview was not redrawn, since the file uses what cannot be drawn yet ({Shorten(unsupported)}). The layers are saved as edited; open and save the file where it was made to renew the preview.";
    }

    private static string Shorten(IReadOnlyList<string> reasons)
    {
        const int MostNamed = 3;
        var named = string.Join("; ", reasons.Take(MostNamed));
        return reasons.Count > MostNamed ? FormattableString.Invariant($"{named} and {reasons.Count - MostNamed} more") : named;
    }

    private PsdPicture DrawAnew()
    {
        var header = detail.Header with { Width = file.Width, Height = file.Height };
        var colors = MixedColors.GetCount(file);
        var withAlpha = header.Channels > colors && detail.LayerInfo is { FirstAlphaIsTransparency: true };
        var drawn = colors + (withAlpha ? 1 : 0);
        using var reader = new PixelReader(file);
        using var writer = new PictureWriter(header, ChooseCompression(), spool);
        var thumbnail = new Compositor(file, reader).RenderWithRaster(withAlpha, Write, PsdThumbnail.LongestSide, PsdThumbnail.LongestSide);
        if (header.Channels > drawn) MoveChannels(writer, drawn, header.Channels);
        return new PsdPicture(writer.Complete(), [.. FlagPicture(isReal: true), .. ReplaceThumbnail(thumbnail)]);

        void Write(MergedBand band)
        {
            for (var channel = 0; channel < drawn; channel++)
            {
                var rows = band.GetRows(channel);
                for (var row = 0; row < band.RowCount; row++) writer.WriteRow(channel, rows.Slice(row * band.RowBytes, band.RowBytes));
            }
        }
    }

    /// <summary>Raw where the file has it so; else rows are packed, also where the file has what this class cannot read.</summary>
    private Compression ChooseCompression() => detail.MergedPicture.Length > 0 && StoredPicture.ReadCompression(detail, opened) == Compression.Raw ? Compression.Raw : Compression.PackBits;

    private IReadOnlyList<ByteSource> Move()
    {
        using var writer = new PictureWriter(detail.Header with { Width = file.Width, Height = file.Height }, ChooseCompression(), spool);
        MoveChannels(writer, 0, detail.Header.Channels);
        return writer.Complete();
    }

    /// <summary>Takes channels over from the stored picture, moved with the canvas.</summary>
    private void MoveChannels(PictureWriter writer, int first, int end)
    {
        var picture = new PlacedPicture(file, detail, opened);
        var row = new byte[PlaneRows.GetRowBytes(file.Width, detail.Header.Depth)];
        for (var channel = first; channel < end; channel++)
        {
            var rows = picture.OpenChannel(channel);
            for (var y = 0; y < file.Height; y++)
            {
                rows.ReadRow(row);
                writer.WriteRow(channel, row);
            }
        }
    }

    private List<(ushort, byte[])> FlagPicture(bool isReal)
    {
        if (detail.Find(PsdResource.Version)?.Data is not MemoryBytes { Bytes: { Length: > RealPictureOffset } bytes }) return [];
        var data = (byte[])bytes.Clone();
        data[RealPictureOffset] = (byte)(isReal ? 1 : 0);
        return [(PsdResource.Version, data)];
    }

    private List<(ushort, byte[])> ReplaceThumbnail(Raster thumbnail) =>
        detail.Find(PsdResource.Thumbnail) is null ? [] : [(PsdResource.Thumbnail, PsdThumbnail.Encode(thumbnail))];
}
