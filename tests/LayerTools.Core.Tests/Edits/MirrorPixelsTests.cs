using CsCheck;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits;

public class MirrorPixelsTests
{
    private static readonly Gen<Bounds> AnyBounds = Gen.Select(Gen.Int[-30, 60], Gen.Int[-5, 20], Gen.Int[0, 23], Gen.Int[0, 6]).Select((x, y, width, height) => Bounds.FromSize(x, y, width, height));

    public static TheoryData<int, Compression, FileFormat> Ways() =>
    [
        (8, Compression.Raw, FileFormat.Psd), (8, Compression.PackBits, FileFormat.Psd), (8, Compression.PackBits, FileFormat.Psb), (8, Compression.Zip, FileFormat.Psd),
        (16, Compression.ZipPrediction, FileFormat.Psd), (16, Compression.PackBits, FileFormat.Psb), (32, Compression.ZipPrediction, FileFormat.Psb), (32, Compression.Raw, FileFormat.Psd),
    ];

    [Theory]
    [MemberData(nameof(Ways))]
    public void Each_sample_goes_to_the_column_across_the_axis(int bitDepth, Compression compression, FileFormat format) =>
        Gen.Select(AnyBounds, AnyBounds, AnyBounds, Gen.Int[-20, 220]).Sample((bounds, mask, painted, doubledAxis) =>
        {
            var (file, part) = Create(bitDepth, compression, format, bounds, mask, painted);
            var copy = MirrorEditTests.Mirror(file, new MirrorEdit { Axis = doubledAxis / 2.0 }).Results![0];
            using var reader = new PixelReader(file);
            foreach (var plane in part.Planes)
            {
                var (from, to) = (part.GetPlaneBounds(plane.Role), copy.GetPlaneBounds(plane.Role));
                Assert.Equal(doubledAxis, from.Left + to.Right);
                Assert.Equal(doubledAxis, from.Right + to.Left);
                Assert.Equal((from.Top, from.Bottom), (to.Top, to.Bottom));
                Assert.Equal(plane.CompressionWord, from.IsEmpty ? plane.CompressionWord : copy.FindPlane(plane.Role)!.CompressionWord);
                AssertReflected(reader.ReadPlane(part, plane.Role)!, reader.ReadPlane(copy, plane.Role)!, from.Width, bitDepth / 8);
            }
        }, iter: 40);

    [Theory]
    [MemberData(nameof(Ways))]
    public void Reflected_twice_is_the_same(int bitDepth, Compression compression, FileFormat format) =>
        Gen.Select(AnyBounds, AnyBounds, AnyBounds, Gen.Int[-20, 220]).Sample((bounds, mask, painted, doubledAxis) =>
        {
            var (file, part) = Create(bitDepth, compression, format, bounds, mask, painted);
            MirrorEditTests.Mirror(file, new MirrorEdit { Axis = doubledAxis / 2.0 }).Results![0].Name = "Again R";
            var back = MirrorEditTests.Mirror(file, new MirrorEdit { Axis = doubledAxis / 2.0, From = Side.Right }).Results![0];
            Assert.Equal((part.Bounds, part.Mask), (back.Bounds, back.Mask));
            AssertSamePlanes(file, part, back);
        }, iter: 20);

    [Fact]
    public void Channels_without_samples_stay_as_they_are()
    {
        var (file, part) = Create(8, Compression.Raw, FileFormat.Psd, Bounds.FromSize(1, 2, 3, 4), Bounds.Empty, Bounds.Empty);
        part.Planes = [new Plane(PlaneRole.Alpha, Plane.NoCompressionWord, MemoryBytes.Empty), new Plane(PlaneRole.Color0, (int)Compression.PackBits, MemoryBytes.Empty)];
        Assert.Equal(part.Planes, MirrorEditTests.Mirror(file, new MirrorEdit()).Results![0].Planes);
    }

    [Fact]
    public void Canvases_of_odd_width_have_an_axis_inside_a_column()
    {
        var file = ModelBuilder.File("odd.psd", 7, 4, ModelBuilder.Pixel("Ear L", new Bounds(3, 0, 5, 1)));
        var copy = MirrorEditTests.Mirror(file, new MirrorEdit()).Results![0];
        Assert.Equal(new Bounds(2, 0, 4, 1), copy.Bounds);
    }

    [Fact]
    public void Groups_reflect_as_a_whole()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("Arm L", ModelBuilder.Pixel("Hand", new Bounds(70, 5, 91, 9)), ModelBuilder.Group("Upper", ModelBuilder.Pixel("Sleeve", new Bounds(60, 0, 65, 30)))));
        var (group, copy) = (file.Find("Arm L"), MirrorEditTests.Mirror(file, new MirrorEdit()).Results![0]);
        Assert.Equal(group.ContentBounds.Reflect(100), copy.ContentBounds);
        Assert.Equal((group.Left + copy.Left + copy.Width, group.Left + group.Width + copy.Left), (100, 100));
    }

    public static TheoryData<string> Files() => [.. SharedFiles.Fixtures.Concat(SharedFiles.FindLayered("corpus")).Concat(SharedFiles.FindLayered("models"))];

    // Every layer of every file, whatever it is called: renamed to the left, reflected to the right, and back.
    [Theory]
    [MemberData(nameof(Files))]
    public void Layers_of_real_files_reflect_and_come_back(string path)
    {
        var file = TryRead(path);
        var originals = file.GetLayers().ToList();
        foreach (var layer in file.GetChildren()) layer.Name = $"Part {layer.LayerNumber} L";
        var copies = MirrorEditTests.Mirror(file, new MirrorEdit()).Results!;
        Assert.Equal(2 * originals.Count, file.LayerCount);
        var newIds = file.GetLayers().Except(originals).Select(layer => layer.Id).ToList();
        Assert.Equal(newIds.Count, newIds.Distinct().Count());
        Assert.Empty(newIds.Intersect([null, .. originals.Select(layer => layer.Id)]));
        foreach (var copy in copies) copy.Name = copy.Name.Replace("Part", "Again", StringComparison.Ordinal);
        var back = MirrorEditTests.Mirror(file, new MirrorEdit { From = Side.Right }, [.. copies]).Results!.SelectMany(layer => new[] { layer }.Concat(layer.GetLayers())).ToList();
        Assert.Equal(originals.Count, back.Count);
        for (var i = 0; i < originals.Count; i++)
        {
            Assert.Equal((originals[i].Bounds, originals[i].Mask, originals[i].Clipped), (back[i].Bounds, back[i].Mask, back[i].Clipped));
            AssertSamePlanes(file, originals[i], back[i]);
        }
    }

    public static TheoryData<string> Fixtures() => [.. SharedFiles.Fixtures];

    [Theory]
    [MemberData(nameof(Fixtures))]
    public void Reflections_are_read_back_as_they_were_saved(string path)
    {
        using var folder = new TemporaryFolder();
        var file = LayerFiles.Read(path);
        foreach (var layer in file.GetChildren()) layer.Name = $"Part {layer.LayerNumber} L";
        MirrorEditTests.Mirror(file, new MirrorEdit());
        LayerFiles.Save(file, folder["again.psd"], new SaveOptions());

        var again = LayerFiles.Read(folder["again.psd"]);
        Assert.Equal(file.Sketch(), again.Sketch());
        using var one = new PixelReader(file);
        using var two = new PixelReader(again);
        foreach (var (saved, read) in file.GetLayers().Zip(again.GetLayers()))
        {
            Assert.Equal((saved.Id, saved.Kind, saved.Mark, saved.Mask), (read.Id, read.Kind, read.Mark, read.Mask));
            Assert.Equal(saved.Planes.Select(plane => plane.Role), read.Planes.Select(plane => plane.Role));
            foreach (var plane in saved.Planes) Assert.Equal(one.ReadPlane(saved, plane.Role), two.ReadPlane(read, plane.Role));
        }
    }

    private static LayerFile TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayeredFileException error) when (!SharedFiles.Fixtures.Contains(path))
        {
            // Which files the tree can be read from is for the reader's tests to say.
            Assert.Skip(error.Message);
            throw;
        }
    }

    private static (LayerFile File, Layer Part) Create(int bitDepth, Compression compression, FileFormat format, Bounds bounds, Bounds mask, Bounds painted)
    {
        var file = new LayerFile("figure.psd", format, 100, 60, ColorMode.Rgb, bitDepth, new StubFileDetail());
        var part = ModelBuilder.Pixel("Eye L", bounds);
        part.Mask = new LayerMask { Bounds = mask, PaintedBounds = painted };
        part.Planes = [];
        var random = new Random(bitDepth);
        foreach (var role in new[] { PlaneRole.PaintedMask, PlaneRole.UserMask, PlaneRole.Alpha, PlaneRole.Color0, PlaneRole.Color1, PlaneRole.Color2 })
        {
            var area = part.GetPlaneBounds(role);
            var samples = new byte[area.Width * area.Height * bitDepth / 8];
            for (var i = 0; i < samples.Length; i++) samples[i] = (byte)random.Next(4);
            part.Planes.Add(PlanePacker.Pack(role, compression, area.Width, area.Height, bitDepth, format, samples, file.Spool));
        }

        file.Root.Append(part);
        file.Renumber();
        return (file, part);
    }

    private static void AssertReflected(byte[] samples, byte[] reflected, int width, int bytes)
    {
        Assert.Equal(samples.Length, reflected.Length);
        for (var i = 0; i < samples.Length / bytes; i++)
        {
            var across = (i / width * width) + (width - 1 - (i % width));
            Assert.Equal(samples.AsSpan(i * bytes, bytes), reflected.AsSpan(across * bytes, bytes));
        }
    }

    private static void AssertSamePlanes(LayerFile file, Layer one, Layer two)
    {
        using var reader = new PixelReader(file);
        Assert.Equal(one.Planes.Select(plane => plane.Role), two.Planes.Select(plane => plane.Role));
        foreach (var plane in one.Planes) Assert.Equal(reader.ReadPlane(one, plane.Role), reader.ReadPlane(two, plane.Role));
    }
}
