using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Images;

/// <summary>Draws pictures of one file into PNG streams. Can be used from several threads.</summary>
internal sealed class PictureFile : IDisposable
{
    /// <summary>No canvas is larger (PSD File Formats Specification, 'File Header Section').</summary>
    private const int LongestSide = 300_000;

    private readonly LayerFile file;
    private readonly ReadLimits limits;
    private readonly PixelReader reader;

    public PictureFile(LayerFile file, ReadLimits limits)
    {
        this.file = file;
        this.limits = limits;
        reader = new PixelReader(file, limits);
    }

    /// <summary>Draws layers.</summary>
    /// <exception cref="LayeredFileException">The picture is larger than a limit, or its channels cannot be drawn.</exception>
    public void Draw(CompositeOptions options, Bounds area, string section, Stream target)
    {
        EnsureReasonable(area, section);
        using var png = new PngPicture(area.Width, area.Height, file.Ppi);
        new Compositor(file, reader, options with { Area = area }).RenderRows((width, _) => new ImageSink(png, new RgbaPacker(file, reader.CreateConverter(), width), width));
        png.Save(target);
    }

    /// <summary>Writes a picture that is in memory.</summary>
    public void Write(Raster raster, Stream target, CancellationToken cancellation)
    {
        using var png = new PngPicture(raster.Width, raster.Height, file.Ppi);
        for (var y = 0; y < raster.Height; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            png.WriteRow(raster.Row(y));
        }

        png.Save(target);
    }

    /// <exception cref="LayeredFileException">The picture is larger than a limit.</exception>
    public void EnsureReasonable(Bounds area, string section)
    {
        var (width, height) = ((long)area.Right - area.Left, (long)area.Bottom - area.Top);
        if (Math.Max(width, height) > LongestSide)
        {
            throw Refuse(section, FormattableString.Invariant($"Its picture would be {width} x {height} px, and no side may have more than {LongestSide}."), "Cut the layer to what is painted.");
        }

        if (width * height > limits.PictureMegapixels * 1_000_000L)
        {
            throw Refuse(section, FormattableString.Invariant($"Its picture would have {Math.Ceiling(width * height / 1e6):0} megapixels; the limit is {limits.PictureMegapixels}."),
                FormattableString.Invariant($"Raise {nameof(ReadLimits.PictureMegapixels)}, or cut the layer to what is painted."));
        }
    }

    public void Dispose() => reader.Dispose();

    private LayeredFileException Refuse(string section, string problem, string remedy) => new(LayeredFileErrorKind.LimitExceeded, file.Path, section, -1, problem, remedy);
}
