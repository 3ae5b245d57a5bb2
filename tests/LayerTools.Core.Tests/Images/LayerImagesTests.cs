using System.Text.Json;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Images;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Xunit;

namespace LayerTools.Tests.Images;

public class LayerImagesTests(ITestOutputHelper output)
{
    private static readonly ImageOptions Plain = new();

    public static TheoryData<string> Files()
    {
        var data = new TheoryData<string>();
        foreach (var path in SharedFiles.Fixtures.Concat(SharedFiles.FindLayered("models"))) data.Add(path);
        return data;
    }

    /// <summary>Rounding both pictures makes at most half a step each; ImageSharp draws in floats.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void The_figure_can_be_put_together_again_with_another_library_alone(string path)
    {
        var file = LayerFiles.Read(path);
        if (!CanBeTold(file)) return;
        using var folder = new TemporaryFolder();
        LayerImages.Write(file, [.. file.GetLayers()], folder.Root, Plain, TestContext.Current.CancellationToken);
        var reassembly = new Reassembly(folder.Root);
        if (!reassembly.IsPossible) return;
        LayerImages.WriteMerged(file, folder["merged"] + ".png", Plain, TestContext.Current.CancellationToken);
        using var expected = Image.Load<Rgba32>(folder["merged"] + ".png");
        using var drawn = reassembly.Draw();

        var largest = 0.0;
        for (var y = 0; y < drawn.Height; y++)
        {
            for (var x = 0; x < drawn.Width; x++)
            {
                // Compared premultiplied: what is hardly there has hardly a colour.
                var (one, other) = (drawn[x, y].ToVector4(), expected[x, y].ToVector4());
                var difference = System.Numerics.Vector4.Abs(new System.Numerics.Vector4(one.X * one.W, one.Y * one.W, one.Z * one.W, one.W) - new System.Numerics.Vector4(other.X * other.W, other.Y * other.W, other.Z * other.W, other.W));
                largest = Math.Max(largest, Math.Max(Math.Max(difference.X, difference.Y), Math.Max(difference.Z, difference.W)));
            }
        }

        output.WriteLine(FormattableString.Invariant($"{file.Name}: largest difference {largest * 255:F2}/255"));
        Assert.InRange(largest * 255, 0, 1);
    }

    [Fact]
    public void Pictures_have_the_pixels_of_their_layers_cut_by_masks_and_without_opacity()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm", new Bounds(-2, 3, 2, 5), alpha: [255, 0, 128, 255, 255, 255, 255, 255]));
        var arm = file.Find("Arm");
        (arm.OpacityByte, arm.Visible, arm.BlendMode) = (10, false, BlendMode.Multiply);
        arm.Mask = new LayerMask { Bounds = new Bounds(-2, 3, 2, 4), DefaultColor = 0 };
        arm.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, [255, 255, 255, 128]));

        using var folder = new TemporaryFolder();
        var masked = Read(file, folder["masked"], Plain);
        var bare = Read(file, folder["bare"], Plain with { NoMask = true });

        Assert.Equal([255, 0, 128, 128, 0, 0, 0, 0], masked.Select(pixel => pixel.A));
        Assert.Equal([255, 0, 128, 255, 255, 255, 255, 255], bare.Select(pixel => pixel.A));
        Assert.Equal(new Rgba32(21, 71, 121, 128), masked[3]);
        Assert.Equal(default, masked[1]);
        Assert.Equal(new Rgba32(49, 99, 149, 255), bare[7]);
    }

    [Fact]
    public void The_manifest_says_where_each_picture_belongs()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Head", ModelBuilder.Pixel("Eye L", new Bounds(-2, 3, 2, 5), clipped: true), ModelBuilder.Pixel("Face")), ModelBuilder.Other(LayerKind.Adjustment, "Tones"));
        file.Find("Head/Eye L").OpacityByte = 51;
        file.Find("Head").Visible = false;
        using var folder = new TemporaryFolder();
        var result = LayerImages.Write(file, [file.Find("Head/Eye L"), file.Find("Tones")], folder.Root, Plain, TestContext.Current.CancellationToken);
        var layers = JsonDocument.Parse(File.ReadAllText(folder["layers.json"])).RootElement.GetProperty("layers").EnumerateArray().ToList();

        Assert.Equal(["Eye L.png", "layers.schema.json", "layers.csv", "layers.json"], result.Paths.Select(Path.GetFileName));
        Assert.Equal([1, 2, 4], layers.Select(layer => layer.GetProperty("order").GetInt32()));
        Assert.Equal(
            """{"order":2,"path":"Head/Eye L","group":1,"kind":"Pixel","image":"Eye L.png","left":-2,"top":3,"width":4,"height":2,"opacity":20,"fillOpacity":100,"blendMode":"Normal","clipped":true,"visible":true,"shown":false,"missing":[]}""",
            JsonSerializer.Serialize(layers[1]));
        Assert.Equal("2,Head/Eye L,1,Pixel,Eye L.png,-2,3,4,2,20,100,Normal,True,True,False,", File.ReadAllLines(folder["layers.csv"])[2]);
        Assert.Equal("Not in the pictures: adjustment layer (Tones).", Assert.Single(result.Warnings));
    }

    [Fact]
    public void The_manifest_has_what_its_schema_asks_for_and_nothing_else()
    {
        var file = LayerFiles.Read(SharedFiles.Fixtures.First(path => Path.GetFileName(path) == "ag-groups.psd"));
        using var folder = new TemporaryFolder();
        LayerImages.Write(file, [.. file.GetLayers()], folder.Root, Plain, TestContext.Current.CancellationToken);
        var manifest = JsonDocument.Parse(File.ReadAllText(folder["layers.json"])).RootElement;
        var schema = JsonDocument.Parse(File.ReadAllText(folder[manifest.GetProperty("$schema").GetString()!])).RootElement;
        var layer = schema.GetProperty("$defs").GetProperty("layer");

        Assert.Equal(NamesOf(schema.GetProperty("properties")), NamesOf(manifest));
        Assert.All(manifest.GetProperty("layers").EnumerateArray(), entry => Assert.Equal(NamesOf(layer.GetProperty("properties")), NamesOf(entry)));
        Assert.Equal(NamesOf(layer.GetProperty("properties")), layer.GetProperty("required").EnumerateArray().Select(name => name.GetString()!));
        Assert.Equal(Enum.GetNames<BlendMode>(), layer.GetProperty("properties").GetProperty("blendMode").GetProperty("enum").EnumerateArray().Select(mode => mode.GetString()));
        Assert.Equal(Enum.GetNames<LayerKind>(), layer.GetProperty("properties").GetProperty("kind").GetProperty("enum").EnumerateArray().Select(kind => kind.GetString()));
    }

    [Fact]
    public void Pictures_can_be_as_large_as_the_canvas()
    {
        var file = ModelBuilder.File("figure.psd", 6, 4, ModelBuilder.Pixel("Arm", new Bounds(-2, 3, 2, 5)), ModelBuilder.Pixel("Stray", new Bounds(50, 50, 52, 51)), ModelBuilder.Pixel("Nothing", Bounds.Empty));
        using var folder = new TemporaryFolder();
        var result = LayerImages.Write(file, [.. file.GetLayers()], folder.Root, Plain with { Canvas = true }, TestContext.Current.CancellationToken);
        using var arm = Image.Load<Rgba32>(folder["Arm.png"]);
        using var stray = Image.Load<Rgba32>(folder["Stray.png"]);

        Assert.Equal(2, result.PictureCount);
        Assert.Equal((6, 4), (arm.Width, arm.Height));
        Assert.Equal(new Rgba32(14, 64, 114, 255), arm[0, 3]);
        Assert.Equal([255, 255, 0], new[] { arm[0, 3].A, arm[1, 3].A, arm[2, 3].A });
        Assert.Equal((6, 4, default(Rgba32)), (stray.Width, stray.Height, stray[5, 3]));
    }

    [Fact]
    public void Existing_files_stay_unless_forced_and_then_nothing_is_written()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm"), ModelBuilder.Pixel("Body"));
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["Body.png"], "mine");

        var error = Assert.Throws<LayeredFileException>(() => LayerImages.Write(file, [.. file.GetLayers()], folder.Root, Plain, TestContext.Current.CancellationToken));

        Assert.Contains("Body.png", error.Message, StringComparison.Ordinal);
        Assert.Equal("Body.png", Path.GetFileName(Assert.Single(Directory.GetFiles(folder.Root))));
        Assert.Equal("mine", File.ReadAllText(folder["Body.png"]));
        LayerImages.Write(file, [.. file.GetLayers()], folder.Root, Plain with { Force = true }, TestContext.Current.CancellationToken);
        Assert.Equal(5, Directory.GetFiles(folder.Root).Length);
    }

    [Fact]
    public void A_part_that_cannot_be_read_leaves_nothing_behind()
    {
        var broken = ModelBuilder.Pixel("Broken");
        broken.Planes[1] = ModelBuilder.Raw(PlaneRole.Color0, [1, 2, 3]);
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm"), broken);
        using var folder = new TemporaryFolder();

        var error = Assert.Throws<LayeredFileException>(() => LayerImages.Write(file, [.. file.GetLayers()], folder["out"], Plain, TestContext.Current.CancellationToken));

        Assert.Equal(LayeredFileErrorKind.Damaged, error.Kind);
        Assert.Empty(Directory.GetFiles(folder["out"]));
    }

    [Fact]
    public void Cancelling_leaves_nothing_behind()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm"), ModelBuilder.Pixel("Body"));
        using var folder = new TemporaryFolder();
        using var stop = new CancellationTokenSource();

        Assert.Throws<OperationCanceledException>(() => LayerImages.Write(file, [.. file.GetLayers()], folder["out"], Plain with { Parallelism = 1, Progress = (_, _) => stop.Cancel() }, stop.Token));

        Assert.Empty(Directory.GetFiles(folder["out"]));
    }

    [Theory]
    [InlineData(40_000, 60_000, "2400 megapixels; the limit is 500")]
    [InlineData(1, 2_000_000, "1 x 2000000 px")]
    public void Pictures_beyond_a_limit_are_refused_before_anything_is_drawn(int width, int height, string problem)
    {
        var file = ModelBuilder.File(ModelBuilder.Other(LayerKind.Pixel, "Vast"));
        file.Find("Vast").Bounds = Bounds.FromSize(0, 0, width, height);
        using var folder = new TemporaryFolder();

        var error = Assert.Throws<LayeredFileException>(() => LayerImages.Write(file, [.. file.GetLayers()], folder["out"], Plain, TestContext.Current.CancellationToken));

        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        Assert.Contains(problem, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_stored_picture_is_the_one_that_the_file_holds()
    {
        var file = LayerFiles.Read(SharedFiles.Fixtures.First(path => Path.GetFileName(path) == "rgb-8-merged-alpha.psd"));
        using var folder = new TemporaryFolder();
        LayerImages.WriteStored(file, folder["stored.png"], Plain, TestContext.Current.CancellationToken);
        using var image = Image.Load<Rgba32>(folder["stored.png"]);
        var pixels = new byte[4 * image.Width * image.Height];
        image.CopyPixelDataTo(pixels);

        Assert.Equal(StoredRaster.Read(file).Pixels, pixels);
    }

    [Theory]
    [InlineData("rgb-8-merged-alpha.psd")]
    public void The_merged_picture_is_warned_about_where_it_lacks_something(string name)
    {
        var file = LayerFiles.Read(SharedFiles.Fixtures.First(path => Path.GetFileName(path) == name));
        using var folder = new TemporaryFolder();

        var result = LayerImages.WriteMerged(file, folder["merged.png"], Plain, TestContext.Current.CancellationToken);

        Assert.Equal(CompositorSupport.FindNotDrawn(file).Count + CompositorSupport.FindNotes(file).Count, result.Warnings.Count);
        using var image = Image.Load(folder["merged.png"]);
        Assert.Equal((file.Width, file.Height), (image.Width, image.Height));
    }

    [Fact]
    public void A_file_without_layers_has_nothing_to_draw()
    {
        using var folder = new TemporaryFolder();

        Assert.Equal(LayeredFileErrorKind.NotSupported, Assert.Throws<LayeredFileException>(() => LayerImages.WriteMerged(ModelBuilder.File(), folder["merged.png"], Plain, TestContext.Current.CancellationToken)).Kind);
        Assert.Equal(LayeredFileErrorKind.NotSupported, Assert.Throws<LayeredFileException>(() => LayerImages.Write(ModelBuilder.File(), [], folder["parts"], Plain, TestContext.Current.CancellationToken)).Kind);
    }

    private static IEnumerable<string> NamesOf(JsonElement element) => element.EnumerateObject().Select(property => property.Name);

    private static Rgba32[] Read(LayerFile file, string folder, ImageOptions options)
    {
        var result = LayerImages.Write(file, [.. file.GetLayers()], folder, options);
        using var image = Image.Load<Rgba32>(result.Paths[0]);
        var pixels = new Rgba32[image.Width * image.Height];
        image.CopyPixelDataTo(pixels);
        return pixels;
    }

    /// <summary>Whether pictures, opacities, modes and clipping are all there is to the figure, and 8 bits enough.</summary>
    private static bool CanBeTold(LayerFile file) =>
        file.ColorMode is ColorMode.Rgb or ColorMode.Grayscale && file.BitDepth is 8 or 16 && file.LayerCount > 0 && file.Width * (long)file.Height < 4_000_000
        && CompositorSupport.FindNotDrawn(file).Count == 0
        && file.GetLayers().All(layer => ImageNotes.Find(file, layer).Count == 0 && !(layer.Clipped && layer.BlendMode == BlendMode.PassThrough) && !IsWeakPassThrough(layer));

    private static bool IsWeakPassThrough(Layer layer) => layer is { IsGroup: true, BlendMode: BlendMode.PassThrough } && (layer.OpacityByte < 255 || layer.FillOpacity < 255);
}
