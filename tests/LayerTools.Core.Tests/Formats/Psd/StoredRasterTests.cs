using ImageMagick;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>Stored pictures of all colour modes as RGB, against Magick.NET's reading of the same files.</summary>
public class StoredRasterTests(ITestOutputHelper output)
{
    /// <summary>L*a*b* is relative to D50 here and to D65 there, so that colours far from grey differ; greys do not.</summary>
    private const double LargestLabMean = 10;

    public static TheoryData<string> Files()
    {
        var data = new TheoryData<string>();
        foreach (var path in SharedFiles.Fixtures.Concat(SharedFiles.FindLayered("corpus/colormodes")).Concat(SharedFiles.FindLayered("corpus/descriptors"))) data.Add(path);
        return data;
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Pictures_are_those_that_an_independent_library_reads(string path)
    {
        var file = LayerFiles.Read(path);
        // The library shows light of 32 bit by the file's profile, and draws a picture of its own where the stored one is marked as not real.
        if (file.ColorMode is ColorMode.Multichannel || file.BitDepth == 32 || !IsReal(file)) return;
        var raster = StoredRaster.Read(file);
        using var image = TryRead(path);
        if (image is null) return;
        image.ColorSpace = ColorSpace.sRGB;
        using var pixels = image.GetPixels();
        var expected = pixels.ToByteArray(PixelMapping.RGBA)!;
        var (sum, max, count) = (0L, 0, 0);
        for (var i = 0; i < expected.Length; i++)
        {
            // The library takes no white out of greys, and rounds colours under little opacity in its own way.
            if (i % 4 == 3 || raster.Pixels[i | 3] < 255) continue;
            var difference = Math.Abs(expected[i] - raster.Pixels[i]);
            sum += difference;
            count++;
            max = Math.Max(max, difference);
        }

        var mean = count == 0 ? 0 : sum / (double)count;
        output.WriteLine(FormattableString.Invariant($"{file.Name} ({file.ColorMode}, {file.BitDepth} bit): mean {mean:F3}, largest {max}"));
        Assert.Equal(((int)image.Width, (int)image.Height), (raster.Width, raster.Height));
        if (file.ColorMode == ColorMode.Lab) Assert.InRange(mean, 0, LargestLabMean);
        else Assert.InRange(max, 0, 1);
    }

    [Fact]
    public void White_is_taken_out_of_colours_under_transparency()
    {
        var file = SharedFiles.Fixtures.Select(path => LayerFiles.Read(path)).First(file => file.Name == "rgb-8-merged-alpha.psd");
        var raster = StoredRaster.Read(file);
        Assert.Contains(raster.Pixels.Where((_, i) => i % 4 == 3), alpha => alpha < 255);
    }

    [Fact]
    public void Channels_without_a_meaning_as_colour_are_refused()
    {
        var file = SharedFiles.Fixtures.Select(path => LayerFiles.Read(path)).First(file => file.ColorMode == ColorMode.Multichannel);
        Assert.Equal(LayeredFileErrorKind.NotSupported, Assert.Throws<LayeredFileException>(() => StoredRaster.Read(file)).Kind);
    }

    private static bool IsReal(LayerFile file) => ((PsdFileDetail)file.Detail).Find(PsdResource.Version)?.Data is not MemoryBytes { Bytes: { Length: > 4 } bytes } || bytes[4] != 0;

    private static MagickImage? TryRead(string path)
    {
        try
        {
            return new MagickImage(path, new MagickReadSettings { FrameIndex = 0, FrameCount = 1 });
        }
        catch (MagickException)
        {
            return null;
        }
    }
}
