using LayerTools.Formats;
using LayerTools.Measures.Detail;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using SixLabors.ImageSharp.Processing;
using SixLabors.ImageSharp.Processing.Processors.Transforms;
using Xunit;

namespace LayerTools.Tests.Measures.Detail;

public class EnlargementFinderTests
{
    private const double Tolerance = 0.05;

    private static readonly IReadOnlyDictionary<string, IResampler> Filters = new Dictionary<string, IResampler>
    {
        ["bilinear"] = KnownResamplers.Triangle,
        ["bicubic"] = KnownResamplers.Bicubic,
        ["Lanczos"] = KnownResamplers.Lanczos3,
    };

    public static TheoryData<string, double, int> Enlargements =>
        [.. from filter in Filters.Keys from factor in new[] { 1.5, 2, 3, 4 } from seed in new[] { 1, 2 } select (filter, factor, seed)];

    [Theory]
    [MemberData(nameof(Enlargements))]
    public void Enlarged_art_is_found_with_its_factor(string filter, double factor, int seed)
    {
        var estimate = EnlargementFinder.Estimate(DrawnPictures.Enlarge(DrawnPictures.Draw(400, seed), factor, Filters[filter]), cancellation: TestContext.Current.CancellationToken);

        Assert.True(estimate.Factor is { } found && Math.Abs((found / factor) - 1) <= Tolerance, $"{estimate}");
        Assert.InRange(estimate.Certainty, 0.25, 1);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Art_as_it_was_drawn_is_not_accused(int seed)
    {
        var art = DrawnPictures.Draw(500, seed);

        var estimate = EnlargementFinder.Estimate(art, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(1, estimate.Factor);
        Assert.InRange(estimate.Certainty, 0.5, 1);
        Assert.Equal(100, estimate.DetailPercent);

        foreach (var sigma in new[] { 0.5f, 0.8f, 1.2f, 2f }) Assert.True(EnlargementFinder.Estimate(DrawnPictures.Soften(art, sigma), cancellation: TestContext.Current.CancellationToken).Factor is null or 1, $"sigma {sigma}");
        foreach (var quality in new[] { 30, 60, 90 }) Assert.True(EnlargementFinder.Estimate(DrawnPictures.ThroughJpeg(art, quality), cancellation: TestContext.Current.CancellationToken).Factor is null or 1, $"quality {quality}");
    }

    [Fact]
    public void Art_that_a_soft_brush_may_have_made_is_left_undecided()
    {
        var estimate = EnlargementFinder.Estimate(DrawnPictures.Soften(DrawnPictures.Draw(500, 1), 2), cancellation: TestContext.Current.CancellationToken);

        Assert.Null(estimate.Factor);
        Assert.Equal(0, estimate.Certainty);
        Assert.Contains("soft brush", estimate.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pattern_drawn_every_few_pixels_is_not_accused()
    {
        var raster = new Raster(300, 300);
        for (var y = 0; y < 300; y++)
        {
            for (var x = 0; x < 300; x++)
            {
                var pixel = raster.Row(y).Slice(4 * x, 4);
                pixel.Fill(x % 5 == 0 || y % 5 == 0 ? (byte)40 : (byte)200);
                pixel[3] = 255;
            }
        }

        Assert.True(EnlargementFinder.Estimate(raster, cancellation: TestContext.Current.CancellationToken).Factor is null or 1);
    }

    [Fact]
    public void Flat_and_tiny_parts_say_why_nothing_can_be_told()
    {
        var flat = new Raster(300, 300);
        flat.Pixels.AsSpan().Fill(200);
        var estimate = EnlargementFinder.Estimate(flat, cancellation: TestContext.Current.CancellationToken);
        Assert.Null(estimate.Factor);
        Assert.Null(estimate.DetailPercent);
        Assert.Contains("too few edges", estimate.Reason, StringComparison.Ordinal);

        Assert.Contains("too small: 63 x 400 px", EnlargementFinder.Estimate(new Raster(63, 400), cancellation: TestContext.Current.CancellationToken).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Figure_art_is_told_from_the_same_enlarged()
    {
        Assert.SkipWhen(SharedFiles.Find("models/figure-small.psd") is null, SharedFiles.Missing);
        var file = LayerFiles.Read(SharedFiles.Find("models/figure-small.psd")!);
        using var reader = new PixelReader(file);
        var parts = file.GetLayers().Where(layer => layer.Kind == LayerKind.Pixel && Math.Min(layer.Width, layer.Height) >= 100).Select(reader.ReadRaster).ToList();
        var drawn = parts.ConvertAll(part => EnlargementFinder.Estimate(part).Factor);
        var enlarged = parts.ConvertAll(part => EnlargementFinder.Estimate(DrawnPictures.Enlarge(part, 2, KnownResamplers.Bicubic)).Factor);

        Assert.All(drawn, factor => Assert.True(factor is null or 1, $"{factor}"));
        var told = enlarged.FindAll(factor => factor is not null);
        Assert.NotEmpty(told);
        // Of those that are told at all, most are told rightly; the rest is called as drawn, never enlarged by another factor.
        Assert.All(told, factor => Assert.True(factor == 1 || Math.Abs((factor!.Value / 2) - 1) <= Tolerance, $"{factor}"));
        Assert.True(told.Count(factor => factor > 1) * 2 >= told.Count, $"{told.Count(factor => factor > 1)} of {told.Count}");
    }
}
