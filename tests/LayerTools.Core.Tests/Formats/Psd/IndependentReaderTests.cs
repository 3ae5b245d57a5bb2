using ImageMagick;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>Files that were renamed, mirrored and saved, read by a reader we did not write: Magick.NET.</summary>
public sealed class IndependentReaderTests
{
    public static TheoryData<string> Files()
    {
        var data = new TheoryData<string>();
        foreach (var path in SharedFiles.Fixtures.Concat(SharedFiles.FindLayered("models"))) data.Add(path);
        return data;
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Names_places_and_pixels_are_what_we_wrote(string path)
    {
        using var folder = new TemporaryFolder();
        var saved = Edit(path, folder["edited" + Path.GetExtension(path)]);
        if (saved is null || saved.ColorMode is not (ColorMode.Rgb or ColorMode.Grayscale) || saved.BitDepth != 8) return;
        using var frames = TryRead(saved.Path);
        // What this reader cannot read in the original, it cannot judge in ours.
        using var originals = TryRead(path);
        if (originals is null) return;
        Assert.NotNull(frames);

        using var reader = new PixelReader(saved);
        var painted = saved.GetLayers().Where(layer => !layer.IsGroup && layer is { Width: > 0, Height: > 0 }).Reverse().ToList();
        foreach (var layer in painted)
        {
            var frame = frames.FirstOrDefault(frame => HasName(frame, layer) && (frame.Page.X, frame.Page.Y) == (layer.Left, layer.Top) && (frame.Width, frame.Height) == ((uint)layer.Width, (uint)layer.Height));
            if (frame is null && !frames.Any(frame => HasName(frame, layer)) && IsLeftOut(layer)) continue;
            Assert.True(frame is not null, $"{layer.LayerPath} at {layer.Bounds} is not among {string.Join("; ", frames.Select(frame => $"{frame.GetAttribute("label")} {frame.Width} x {frame.Height} at {frame.Page.X}, {frame.Page.Y}"))}");
            AssertSamePixels(layer, reader.ReadRaster(layer), frame);
        }
    }

    [Fact]
    public void Most_fixtures_can_be_judged_by_the_independent_reader()
    {
        var readable = SharedFiles.Fixtures.Count(path =>
        {
            using var frames = TryRead(path);
            return frames is { Count: > 1 };
        });
        Assert.InRange(readable, 40, int.MaxValue);
    }

    /// <summary>The reader knows the short name only, whose code page it does not ask for: names beyond ASCII are compared by the other readers.</summary>
    private static bool HasName(IMagickImage<byte> frame, Layer layer) =>
        layer.Name.All(char.IsAscii) ? frame.GetAttribute("label") == layer.Name : frame.GetAttribute("label") is { } label && (label.Contains('?') || !label.All(char.IsAscii));

    /// <summary>The reader leaves out layers that it takes for no pictures of their own.</summary>
    private static bool IsLeftOut(Layer layer) => layer.Kind != LayerKind.Pixel || layer.Planes.Count == 0;

    private static LayerFile? Edit(string path, string destination)
    {
        try
        {
            var file = LayerFiles.Read(path);
            RenameEdit.ByPattern("^", "New ", false, new RenameOptions { AllowDuplicate = true }).Plan(file, [.. file.GetLayers()]).Apply();
            new MirrorEdit().Plan(file, [.. file.GetLayers()]).Apply();
            LayerFiles.Save(file, destination, new SaveOptions());
            return LayerFiles.Read(destination);
        }
        catch (LayeredFileException error) when (error.Kind is LayeredFileErrorKind.NotSupported or LayeredFileErrorKind.EditRefused)
        {
            return null;
        }
    }

    private static MagickImageCollection? TryRead(string path)
    {
        try
        {
            return new MagickImageCollection(path);
        }
        catch (MagickException)
        {
            return null;
        }
    }

    /// <summary>Colours where there is any opacity; the reader multiplies nothing, but applies a layer's own opacity and masks to its alpha, so alpha is compared for plain layers only.</summary>
    private static void AssertSamePixels(Layer layer, Raster expected, IMagickImage<byte> frame)
    {
        using var pixels = frame.GetPixels();
        var actual = pixels.ToByteArray(PixelMapping.RGBA)!;
        var isPlain = layer is { OpacityByte: 255, Mask: null };
        for (var i = 0; i < actual.Length; i += 4)
        {
            if (actual[i + 3] > 0)
            {
                for (var channel = 0; channel < 3; channel++) Assert.True(actual[i + channel] == expected.Pixels[i + channel], $"{layer.LayerPath}: colour {channel} of pixel {i / 4} is {actual[i + channel]} instead of {expected.Pixels[i + channel]}");
            }

            if (isPlain) Assert.True(actual[i + 3] == expected.Pixels[i + 3], $"{layer.LayerPath}: alpha of pixel {i / 4} is {actual[i + 3]} instead of {expected.Pixels[i + 3]}");
        }
    }
}
