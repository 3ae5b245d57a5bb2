using LayerTools.Model;
using LayerTools.Pixels.Resampling;

namespace LayerTools.Formats.Psd;

/// <summary>Resamples the stored merged picture, which has to stand in where the layers cannot be drawn, with the channels that are kept in it.</summary>
internal sealed class PictureScaler(LayerFile file, PsdFileDetail detail, CancellationToken cancellation)
{
    /// <exception cref="Errors.LayeredFileException">The picture is damaged, or the file changed on disk.</exception>
    public IReadOnlyList<ByteSource> Scale(CanvasScale scale, ResampleFilter filter, SpoolFile spool)
    {
        using var opened = new OpenedSources();
        var picture = new PlacedPicture(file, detail, opened);
        var area = new ScaledArea(scale, filter, new Bounds(0, 0, scale.OldWidth, scale.OldHeight), new Bounds(0, 0, scale.NewWidth, scale.NewHeight));
        using var writer = new PictureWriter(detail.Header with { Width = scale.NewWidth, Height = scale.NewHeight }, picture.Compression, spool);
        // Its colours lie on white and its opacity beside them, so that each channel is a picture of its own.
        for (var i = 0; i < detail.Header.Channels; i++)
        {
            var channel = i;
            new ColorResampler(area, detail.Header.Depth, [picture.OpenChannel(channel).ReadRow], null, [row => writer.WriteRow(channel, row)], null).Run(cancellation);
        }

        return writer.Complete();
    }
}
