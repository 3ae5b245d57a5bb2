using CsCheck;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits;

/// <summary>A figure that is symmetric to the pixel stays so.</summary>
public class ResizeSymmetryTests
{
    private static readonly Gen<Bounds> AnyBounds = Gen.Select(Gen.Int[-30, 60], Gen.Int[-5, 20], Gen.Int[1, 43], Gen.Int[1, 16]).Select((x, y, width, height) => Bounds.FromSize(x, y, width, height));

    [Theory]
    [InlineData(8, ResampleFilter.Area)]
    [InlineData(8, ResampleFilter.CatmullRom)]
    [InlineData(16, ResampleFilter.Area)]
    [InlineData(32, ResampleFilter.CatmullRom)]
    public void Resizing_the_reflection_is_reflecting_the_resized(int bitDepth, ResampleFilter filter) =>
        Gen.Select(AnyBounds, AnyBounds, Gen.Int[20, 101], Gen.Int[10, 50], Gen.Double[10, 300], Gen.Int).Sample((bounds, mask, width, height, percent, seed) =>
        {
            var resize = new ResizeEdit { Percent = percent, Filter = filter };
            var first = Create(bitDepth, bounds, mask, width, height, seed);
            var reflected = Reflect(first);
            resize.Plan(first, []).Apply();
            var second = Create(bitDepth, bounds, mask, width, height, seed);
            resize.Plan(second, []).Apply();
            var expected = Reflect(second);

            Assert.Equal(expected.Bounds, reflected.Bounds);
            Assert.Equal(expected.Mask, reflected.Mask);
            using var one = new PixelReader(second);
            using var two = new PixelReader(first);
            foreach (var plane in expected.Planes) Assert.Equal(one.ReadPlane(expected, plane.Role), two.ReadPlane(reflected, plane.Role));
        }, iter: 60);

    private static Layer Reflect(LayerFile file) => MirrorEditTests.Mirror(file, new MirrorEdit()).Results!.Single();

    private static LayerFile Create(int bitDepth, Bounds bounds, Bounds mask, int width, int height, int seed)
    {
        var file = new LayerFile("figure.psd", FileFormat.Psd, width, height, ColorMode.Rgb, bitDepth, new StubFileDetail());
        var part = ModelBuilder.Pixel("Eye L", bounds);
        part.Mask = new LayerMask { Bounds = mask, DefaultColor = 255 };
        part.Planes = [];
        var random = new Random(seed);
        foreach (var role in new[] { PlaneRole.UserMask, PlaneRole.Alpha, PlaneRole.Color0, PlaneRole.Color1, PlaneRole.Color2 })
        {
            var area = part.GetPlaneBounds(role);
            var samples = new byte[area.Width * area.Height * bitDepth / 8];
            random.NextBytes(samples);
            // At 32 bit any bytes would be numbers of any size; these are 0 to 1.
            for (var i = 0; bitDepth == 32 && i < samples.Length; i += 4) System.Buffers.Binary.BinaryPrimitives.WriteSingleBigEndian(samples.AsSpan(i), random.NextSingle());
            part.Planes.Add(PlanePacker.Pack(role, Compression.PackBits, area.Width, area.Height, bitDepth, file.Format, samples, file.Spool));
        }

        file.Root.Append(part);
        file.Renumber();
        return file;
    }
}
