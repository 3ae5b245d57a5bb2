using LayerTools.Errors;
using LayerTools.Images;
using LayerTools.Measures.Budget;
using LayerTools.Model;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Xunit;

namespace LayerTools.Tests.Measures.Budget;

public class TexturePagesTests
{
    private static readonly TextureProfile Textures = new() { PageSize = 1024, Padding = 4 };

    [Fact]
    public void Memory_is_that_of_whole_pages_with_and_without_the_exact_chain_of_mipmaps()
    {
        var budget = Pack(Figure(), Textures).Sum();

        Assert.Equal((3, 1, 1), (budget.Parts, budget.Pages, budget.FewestPages));
        Assert.Equal(4, budget.MemoryMB);
        var pixels = 0L;
        for (var side = 1024L; side > 0; side /= 2) pixels += side * side;
        Assert.Equal(pixels * 4 / 1048576.0, budget.MipmapMemoryMB);
        Assert.Equal(((600 * 500) + (300 * 500) + (400 * 200)) * 100.0 / (1024 * 1024), budget.FillPercent, 10);
        Assert.Equal("Coat", budget.LargestPart);
        Assert.Equal(600 * 500 * 100.0 / ((600 * 500) + (300 * 500) + (400 * 200)), budget.LargestPartPercent, 10);
    }

    [Fact]
    public void Smaller_scales_save_whole_pages()
    {
        var file = ModelBuilder.File("hero.psd", 1000, 1000, [.. Enumerable.Range(0, 4).Select(i => Painting.Of($"Part {i}").Rectangle(0, i, 900, 900).ToLayer())]);
        var budget = Pack(file, Textures).Sum();

        Assert.Equal((4, 4, 1), (budget.Pages, budget.PagesAt75, budget.PagesAt50));
        Assert.Equal((16, 0, 12), (budget.MemoryMB, budget.SavedMBAt75, budget.SavedMBAt50));
    }

    [Fact]
    public void The_padding_is_kept_to_each_other_and_to_the_edges()
    {
        var parts = Pack(Figure(), Textures with { Padding = 7 }).ByCost();
        var boxes = parts.Select(part => Bounds.FromSize(part.Left, part.Top, part.Turned ? part.Height : part.Width, part.Turned ? part.Width : part.Height)).ToList();

        foreach (var box in boxes)
        {
            var padded = new Bounds(box.Left - 7, box.Top - 7, box.Right + 7, box.Bottom + 7);
            Assert.Equal(padded, padded.Intersect(new Bounds(0, 0, 1024, 1024)));
            Assert.All(boxes.Where(other => other != box), other => Assert.True(padded.Intersect(other).IsEmpty));
        }
    }

    [Fact]
    public void Parts_are_listed_by_what_they_cost()
    {
        var parts = Pack(Figure(), Textures).ByCost();

        Assert.Equal(["Coat", "Arm", "Head"], parts.Select(part => part.Name));
        Assert.Equal(600 * 500 * 4 / 1048576.0, parts[0].MemoryMB);
        Assert.Equal(100, parts.Sum(part => part.SharePercent), 10);
        Assert.Equal(50, parts[1].PaintedPercent);
    }

    [Fact]
    public void Chosen_layers_alone_are_packed_and_a_group_stands_for_its_parts()
    {
        var file = ModelBuilder.File("hero.psd", 1000, 1000, ModelBuilder.Group("Left", Painting.Of("Arm").Rectangle(0, 0, 10, 10).ToLayer()), Painting.Of("Coat").Rectangle(0, 0, 10, 10).ToLayer());

        Assert.Equal("Left/Arm", Assert.Single(TexturePages.Pack(file, [file.Find("Left")], Textures, TestContext.Current.CancellationToken).ByCost()).LayerPath);
    }

    [Fact]
    public void A_part_larger_than_a_page_is_refused_with_the_page_that_would_do()
    {
        var file = ModelBuilder.File("hero.psd", 3000, 3000, Painting.Of("Coat").Rectangle(0, 0, 2030, 20).ToLayer(), Painting.Of("Cape").Rectangle(0, 0, 20, 1030).ToLayer());

        var error = Assert.Throws<LayeredFileException>(() => Pack(file, Textures));
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        Assert.Equal("layer 'Coat'", error.Section);
        Assert.Contains("1016 x 1016, and so are 1 more", error.Problem, StringComparison.Ordinal);
        Assert.Contains("-PageSize 2048", error.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_without_parts_needs_nothing()
    {
        var budget = Pack(ModelBuilder.File("hero.psd", 100, 100), Textures).Sum();

        Assert.Equal((0, 0, 0.0, 0.0, 0.0), (budget.Parts, budget.Pages, budget.FillPercent, budget.MemoryMB, budget.MipmapMemoryMB));
        Assert.Null(budget.LargestPart);
    }

    [Fact]
    public void Pictures_show_each_part_where_it_lies_turned_if_it_is()
    {
        using var folder = new TemporaryFolder();
        // On a page of 1024 px, 1000 × 600 leaves only a strip beside which the other fits turned.
        var file = ModelBuilder.File("hero.psd", 1200, 1200,
            Painting.Of("Long").Rectangle(0, 0, 600, 1010, rgb: 0x0000FF).ToLayer(),
            Painting.Of("Flat").Rectangle(0, 0, 1000, 300, rgb: 0x00FF00).Rectangle(0, 0, 500, 300, rgb: 0xFF0000).ToLayer());
        var pages = Pack(file, Textures with { Turn = true });

        var path = Assert.Single(TexturePictures.Write(pages, folder["page.png"], force: false, TestContext.Current.CancellationToken));

        using var picture = Image.Load<Rgba32>(path);
        Assert.Equal((1024, 1024), (picture.Width, picture.Height));
        var flat = pages.ByCost().Single(part => part.Name == "Flat");
        Assert.True(flat.Turned);
        // Turned clockwise, what was left is on top.
        Assert.Equal(new Rgba32(255, 0, 0), picture[flat.Left + 250, flat.Top + 200]);
        Assert.Equal(new Rgba32(0, 255, 0), picture[flat.Left + 250, flat.Top + 800]);
        var longest = pages.ByCost().Single(part => part.Name == "Long");
        Assert.Equal(new Rgba32(0, 0, 255), picture[longest.Left + 300, longest.Top + 500]);
        Assert.NotEqual(new Rgba32(0, 0, 255), picture[longest.Left - 2, longest.Top + 500]);
        Assert.Throws<LayeredFileException>(() => TexturePictures.Write(pages, path, force: false, TestContext.Current.CancellationToken));
    }

    private static TexturePages Pack(LayerFile file, TextureProfile textures) => TexturePages.Pack(file, null, textures, TestContext.Current.CancellationToken);

    private static LayerFile Figure() => ModelBuilder.File("hero.psd", 1000, 1000,
        Painting.Of("Head").Rectangle(0, 0, 400, 200).ToLayer(),
        Painting.Of("Arm").Rectangle(0, 0, 150, 250).Rectangle(150, 250, 150, 250).ToLayer(),
        Painting.Of("Coat").Rectangle(50, 50, 600, 500).ToLayer());
}
