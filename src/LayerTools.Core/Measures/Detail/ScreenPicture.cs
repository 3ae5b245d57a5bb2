using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Images;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Profiles;

namespace LayerTools.Measures.Detail;

/// <summary>
/// Writes what a screen would show of a framing, pixel for pixel: where canvas pixels are larger than screen pixels as hard squares, else each screen pixel as the mean of what it
/// covers. Of the figure, the bust and the face it shows all parts that are switched on; a chosen layer or group alone. What is clear is mid-grey.
/// </summary>
public static class ScreenPicture
{
    private const int MidGrey = 128;

    /// <summary>Most canvas pixels that are drawn for one picture, as many as a canvas of 63,000 px a side has: parts that lie far outside of the canvas make a view of a thousand times the canvas.</summary>
    private const long LargestView = 4_000_000_000;

    /// <summary>Writes one PNG as large as the screen.</summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="framing">What the camera looks at.</param>
    /// <param name="layer">The layer, for <see cref="FramingKind.Part"/>.</param>
    /// <param name="profile">The words for parts.</param>
    /// <param name="screen">The screen.</param>
    /// <param name="path">The PNG to write.</param>
    /// <param name="force">Whether a file that exists is overwritten.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <returns>The file, full path.</returns>
    /// <exception cref="LayeredFileException">There is no such framing, the file exists or cannot be written, or a layer cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static string Write(LayerFile file, FramingKind framing, Layer? layer, LayerProfile profile, ScreenSize screen, string path, bool force, CancellationToken cancellation = default)
    {
        using var target = new ImageFolder([Path.GetFullPath(path)], force);
        using var source = new PictureFile(file, ReadLimits.Default);
        var picture = Draw(file, FindBox(file, framing, layer, profile, cancellation), framing == FramingKind.Part ? layer : null, screen, cancellation);
        target.Write(0, stream => source.Write(picture, stream, cancellation));
        cancellation.ThrowIfCancellationRequested();
        return target.Commit()[0];
    }

    internal static Raster Draw(LayerFile file, Bounds box, Layer? subject, ScreenSize screen, CancellationToken cancellation)
    {
        var fit = new ScreenFit(box, screen);
        if (((double)fit.View.Right - fit.View.Left) * ((double)fit.View.Bottom - fit.View.Top) > LargestView)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, "view", -1,
                FormattableString.Invariant($"The view is larger than {LargestView / 1_000_000} million canvas px."), "Cut away what lies far outside of the canvas; the rule PixelsOutsideCanvas finds it.");
        }

        var roles = new StatusOptions();
        var options = new CompositeOptions
        {
            Subject = subject,
            Area = fit.View,
            Shows = subject is null ? layer => layer.Visible && roles.TellRole(layer) == LayerRole.Part : null,
            Cancellation = cancellation,
        };
        using var reader = new PixelReader(file);
        var compositor = new Compositor(file, reader, options);
        if (fit.Ratio > 1) return Lay(compositor.RenderWhole(), screen, fit.Ratio, fit.ViewLeft, fit.ViewTop);
        var small = compositor.RenderRaster(screen.Width, screen.Height);
        return Lay(small, screen, 1, (screen.Width - small.Width) / 2, (screen.Height - small.Height) / 2);
    }

    /// <summary>Lays a picture on grey, each of its pixels so many times as large.</summary>
    private static Raster Lay(Raster drawn, ScreenSize screen, double ratio, double left, double top)
    {
        var picture = new Raster(screen.Width, screen.Height);
        for (var y = 0; y < screen.Height; y++)
        {
            var row = picture.Row(y);
            var fromY = (int)Math.Floor((y + 0.5 - top) / ratio);
            for (var x = 0; x < screen.Width; x++)
            {
                var pixel = row.Slice(4 * x, 4);
                pixel.Fill(MidGrey);
                pixel[3] = byte.MaxValue;
                var fromX = (int)Math.Floor((x + 0.5 - left) / ratio);
                if (fromX < 0 || fromX >= drawn.Width || fromY < 0 || fromY >= drawn.Height) continue;
                var seen = drawn.Row(fromY).Slice(4 * fromX, 4);
                for (var channel = 0; channel < 3; channel++) pixel[channel] = (byte)(((seen[channel] * seen[3]) + (MidGrey * (byte.MaxValue - seen[3])) + 127) / byte.MaxValue);
            }
        }

        return picture;
    }

    private static Bounds FindBox(LayerFile file, FramingKind framing, Layer? layer, LayerProfile profile, CancellationToken cancellation)
    {
        var survey = FigureSurvey.Take(file, cancellation);
        if (framing == FramingKind.Part)
        {
            var part = layer ?? throw new ArgumentNullException(nameof(layer));
            return FigureFramings.FindPart(survey, part) ?? throw Refuse(file, $"layer '{part.LayerPath}'", "Nothing is painted on it.", "Choose another layer.");
        }

        var names = new NameReader(profile.Naming);
        return new FigureFramings(survey, named => names.Read(named.Name)).Find(framing)
            ?? throw Refuse(file, "layers", $"There is no {framing.ToString().ToLowerInvariant()} among the parts that are switched on.", "Choose the layers to look at, for example with -Name.");
    }

    private static LayeredFileException Refuse(LayerFile file, string section, string problem, string remedy) => new(LayeredFileErrorKind.NotSupported, file.Path, section, -1, problem, remedy);
}
