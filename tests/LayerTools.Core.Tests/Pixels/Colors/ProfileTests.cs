using System.Text;
using ImageMagick;
using LayerTools.Pixels.Colors;
using Xunit;
using ColorProfile = LayerTools.Pixels.Colors.ColorProfile;

namespace LayerTools.Tests.Pixels.Colors;

/// <summary>Inks through a real profile and by the plain formula, against Magick.NET, which brings a profile for print with it.</summary>
public class ProfileTests(ITestOutputHelper output)
{
    private const int Side = 32;

    [Fact]
    public void Inks_through_a_profile_look_as_an_independent_library_shows_them()
    {
        var table = ProfileTable.TryRead(new ColorProfile(ColorProfiles.USWebCoatedSWOP.ToByteArray()));
        Assert.NotNull(table);
        var expected = ReadWithMagick(CreateInks(), image =>
        {
            image.SetProfile(ColorProfiles.USWebCoatedSWOP);
            image.TransformColorSpace(ColorProfiles.SRGB);
        });

        // Both mix between the table's points, one in cubes and one in tetrahedra, and the library in whole numbers.
        Compare(new ProfileConverter(table), expected, largestMean: 0.5, largest: 10);
    }

    [Fact]
    public void Inks_without_a_profile_follow_the_same_plain_formula() =>
        Compare(new InkConverter(), ReadWithMagick(CreateInks(), image => image.ColorSpace = ColorSpace.sRGB), largestMean: 0.5, largest: 1);

    [Fact]
    public void A_profile_without_a_table_of_inks_has_none()
    {
        Assert.Null(ProfileTable.TryRead(null));
        Assert.Null(ProfileTable.TryRead(new ColorProfile(ColorProfiles.SRGB.ToByteArray())));
        Assert.Null(ProfileTable.TryRead(new ColorProfile([1, 2, 3])));
    }

    [Fact]
    public void A_profile_that_is_cut_short_anywhere_is_none_or_still_whole()
    {
        var bytes = ColorProfiles.USWebCoatedSWOP.ToByteArray();
        for (var length = 0; length < 2000; length += 7) Assert.Null(ProfileTable.TryRead(new ColorProfile(bytes[..length])));
        foreach (var part in new[] { 3, 2 }) Assert.NotNull(new ColorProfile(bytes[..(bytes.Length / part)]));
    }

    [Fact]
    public void The_curve_of_a_profile_is_that_of_sRGB_for_sRGB()
    {
        var curve = new ColorProfile(ColorProfiles.SRGB.ToByteArray()).FindLightCurve();
        Assert.NotNull(curve);
        for (var level = 0; level <= 255; level++)
        {
            var light = curve.Decode(level / 255.0);
            Assert.Equal(SrgbCurve.Decode(level / 255.0), light, 0.001);
            Assert.Equal(level / 255.0, curve.Encode(light), 0.001);
        }
    }

    [Fact]
    public void Curves_of_one_number_and_of_parameters_are_read()
    {
        // 2.0 as 8.8 fixed; g 2, a 0.5, b 0.5, c 0.25, d 0.1 as 15.16 fixed
        var power = Profile("63757276 00000000 00000001 0200");
        Assert.Equal(0.25, power!.Decode(0.5), 1e-9);
        Assert.Equal(0.5, power.Encode(0.25), 1e-9);
        var parameters = Profile("70617261 00000000 0003 0000 00020000 00008000 00008000 00004000 0000199A");
        Assert.Equal(0.0125, parameters!.Decode(0.05), 1e-9);
        Assert.Equal(0.5625, parameters.Decode(0.5), 1e-9);
        Assert.Equal(0.5, parameters.Encode(0.5625), 1e-9);
        Assert.Equal(0.05, parameters.Encode(0.0125), 1e-9);
        Assert.Null(Profile("70617261 00000000 0009 0000 00020000"));
        Assert.Null(Profile("63757276 00000000 7FFFFFFF 0200"));
    }

    private static LightCurve? Profile(string tag)
    {
        var content = Convert.FromHexString(tag.Replace(" ", "", StringComparison.Ordinal));
        var bytes = new byte[144 + content.Length];
        new byte[] { 0, 0, 0, 1, (byte)'k', (byte)'T', (byte)'R', (byte)'C', 0, 0, 0, 144, 0, 0, 0, (byte)content.Length }.CopyTo(bytes, 128);
        content.CopyTo(bytes, 144);
        return new ColorProfile(bytes).FindLightCurve();
    }

    /// <summary>Inks as Magick.NET counts them, from none (0) to full (255); invented by chance.</summary>
    private static byte[] CreateInks()
    {
        var inks = new byte[4 * Side * Side];
        new Random(5).NextBytes(inks);
        return inks;
    }

    private static (byte[] Inks, byte[] Rgb) ReadWithMagick(byte[] inks, Action<MagickImage> convert)
    {
        using var image = new MagickImage(inks, new PixelReadSettings(Side, Side, StorageType.Char, PixelMapping.CMYK) { ReadSettings = { ColorSpace = ColorSpace.CMYK } });
        convert(image);
        using var pixels = image.GetPixels();
        return (inks, pixels.ToByteArray(PixelMapping.RGB)!);
    }

    private void Compare(ColorConverter converter, (byte[] Inks, byte[] Rgb) expected, double largestMean, int largest)
    {
        var (sum, max) = (0, 0);
        Span<byte> rgb = stackalloc byte[3];
        Span<float> stored = stackalloc float[4];
        for (var pixel = 0; pixel < Side * Side; pixel++)
        {
            for (var ink = 0; ink < 4; ink++) stored[ink] = 1 - (expected.Inks[(4 * pixel) + ink] / 255f);
            converter.Convert(stored, rgb);
            for (var place = 0; place < 3; place++)
            {
                var difference = Math.Abs(rgb[place] - expected.Rgb[(3 * pixel) + place]);
                sum += difference;
                max = Math.Max(max, difference);
            }
        }

        var mean = sum / (3.0 * Side * Side);
        output.WriteLine(FormattableString.Invariant($"mean {mean:F3}, largest {max}"));
        Assert.True(mean <= largestMean && max <= largest, FormattableString.Invariant($"mean {mean:F3}, largest {max}"));
    }

    [Fact]
    public void A_profile_says_what_it_is_called()
    {
        Assert.Contains("sRGB", new ColorProfile(ColorProfiles.SRGB.ToByteArray()).Description, StringComparison.Ordinal);
        Assert.Equal("Grün 緑", new ColorProfile(WithDescription([.. "mluc"u8, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 12, .. "deDE"u8, 0, 0, 0, 12, 0, 0, 0, 28, .. Encoding.BigEndianUnicode.GetBytes("Grün 緑")])).Description);
        Assert.Equal("Invented", new ColorProfile(WithDescription([.. "desc"u8, 0, 0, 0, 0, 0, 0, 0, 9, .. "Invented\0"u8])).Description);
    }

    [Fact]
    public void A_description_that_contradicts_its_lengths_is_none()
    {
        Assert.Null(new ColorProfile([]).Description);
        Assert.Null(new ColorProfile(WithDescription([.. "desc"u8, 0, 0, 0, 0, 255, 255, 255, 255, .. "Invented\0"u8])).Description);
        Assert.Null(new ColorProfile(WithDescription([.. "mluc"u8, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 12, .. "deDE"u8, 255, 255, 255, 255, 255, 255, 255, 255])).Description);
    }

    private static byte[] WithDescription(byte[] tag) => [.. new byte[128], 0, 0, 0, 1, .. "desc"u8, 0, 0, 0, 144, 0, 0, 0, (byte)tag.Length, .. tag];
}
