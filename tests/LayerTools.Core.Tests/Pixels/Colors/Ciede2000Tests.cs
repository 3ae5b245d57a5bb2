using System.Globalization;
using LayerTools.Pixels.Colors;
using Xunit;

namespace LayerTools.Tests.Pixels.Colors;

public sealed class Ciede2000Tests
{
    /// <summary>
    /// Pairs and differences of table 1 in Sharma, Wu and Dalal, "The CIEDE2000 Color-Difference Formula: Implementation Notes, Supplementary Test Data, and Mathematical
    /// Observations", 2005; typed off the test data of the library scikit-image (skimage/color/tests/ciede2000_test_data.txt).
    /// </summary>
    private const string Published = """
        50.0000 2.6772 -79.7751 50.0000 0.0000 -82.7485 2.0425
        50.0000 3.1571 -77.2803 50.0000 0.0000 -82.7485 2.8615
        50.0000 2.8361 -74.0200 50.0000 0.0000 -82.7485 3.4412
        50.0000 -1.3802 -84.2814 50.0000 0.0000 -82.7485 1.0000
        50.0000 -1.1848 -84.8006 50.0000 0.0000 -82.7485 1.0000
        50.0000 -0.9009 -85.5211 50.0000 0.0000 -82.7485 1.0000
        50.0000 0.0000 0.0000 50.0000 -1.0000 2.0000 2.3669
        50.0000 -1.0000 2.0000 50.0000 0.0000 0.0000 2.3669
        50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0009 7.1792
        50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0010 7.1792
        50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0011 7.2195
        50.0000 2.4900 -0.0010 50.0000 -2.4900 0.0012 7.2195
        50.0000 -0.0010 2.4900 50.0000 0.0009 -2.4900 4.8045
        50.0000 -0.0010 2.4900 50.0000 0.0010 -2.4900 4.8045
        50.0000 -0.0010 2.4900 50.0000 0.0011 -2.4900 4.7461
        50.0000 2.5000 0.0000 50.0000 0.0000 -2.5000 4.3065
        50.0000 2.5000 0.0000 73.0000 25.0000 -18.0000 27.1492
        50.0000 2.5000 0.0000 61.0000 -5.0000 29.0000 22.8977
        50.0000 2.5000 0.0000 56.0000 -27.0000 -3.0000 31.9030
        50.0000 2.5000 0.0000 58.0000 24.0000 15.0000 19.4535
        50.0000 2.5000 0.0000 50.0000 3.1736 0.5854 1.0000
        50.0000 2.5000 0.0000 50.0000 3.2972 0.0000 1.0000
        50.0000 2.5000 0.0000 50.0000 1.8634 0.5757 1.0000
        50.0000 2.5000 0.0000 50.0000 3.2592 0.3350 1.0000
        60.2574 -34.0099 36.2677 60.4626 -34.1751 39.4387 1.2644
        63.0109 -31.0961 -5.8663 62.8187 -29.7946 -4.0864 1.2630
        61.2901 3.7196 -5.3901 61.4292 2.2480 -4.9620 1.8731
        35.0831 -44.1164 3.7933 35.0232 -40.0716 1.5901 1.8645
        22.7233 20.0904 -46.6940 23.0331 14.9730 -42.5619 2.0373
        36.4612 47.8580 18.3852 36.2715 50.5065 21.2231 1.4146
        90.8027 -2.0831 1.4410 91.1528 -1.6435 0.0447 1.4441
        90.9257 -0.5406 -0.9208 88.6381 -0.8985 -0.7239 1.5381
        6.7747 -0.2908 -2.4247 5.8714 -0.0985 -2.2286 0.6377
        2.0776 0.0795 -1.1350 0.9033 -0.0636 -0.5514 0.9082
        """;

    [Fact]
    public void All_34_published_pairs_agree_to_four_digits_in_both_directions()
    {
        var rows = Published.Split('\n').Select(row => Array.ConvertAll(row.Split(' '), number => double.Parse(number, CultureInfo.InvariantCulture))).ToList();
        Assert.Equal(34, rows.Count);
        Assert.All(rows, row =>
        {
            var (one, two) = (new CieLab(row[0], row[1], row[2]), new CieLab(row[3], row[4], row[5]));
            Assert.Equal(row[6], Ciede2000.Measure(one, two), 0.00005001);
            Assert.Equal(Ciede2000.Measure(one, two), Ciede2000.Measure(two, one), 1e-9);
        });
    }

    [Fact]
    public void Black_and_white_differ_by_100() => Assert.Equal(100, Ciede2000.Measure(CieLab.FromSrgb(0, 0, 0), CieLab.FromSrgb(255, 255, 255)), 0.001);

    /// <summary>Values of a colour calculator for D65 and sRGB, as the tests of the library scikit-image quote them (skimage/color/tests/test_colorconv.py).</summary>
    [Theory]
    [InlineData(255, 255, 255, 100, 0, 0)]
    [InlineData(255, 255, 0, 97.1393, -21.5537, 94.4780)]
    [InlineData(0, 255, 255, 91.1132, -48.0875, -14.1312)]
    [InlineData(0, 255, 0, 87.7347, -86.1827, 83.1793)]
    [InlineData(255, 0, 255, 60.3242, 98.2343, -60.8249)]
    [InlineData(255, 0, 0, 53.2408, 80.0925, 67.2032)]
    [InlineData(0, 0, 255, 32.2970, 79.1875, -107.8602)]
    [InlineData(0, 0, 0, 0, 0, 0)]
    public void Colours_are_turned_to_lab_as_another_library_does(byte red, byte green, byte blue, double lightness, double a, double b)
    {
        // The matrix of the standard has four digits and the calculator's seven.
        const double FourDigits = 0.05;
        var lab = CieLab.FromSrgb(red, green, blue);
        Assert.Equal(lightness, lab.Lightness, FourDigits);
        Assert.Equal(a, lab.A, FourDigits);
        Assert.Equal(b, lab.B, FourDigits);
    }

    [Fact]
    public void Greys_have_no_hue() => Assert.All(Enumerable.Range(0, 256), code =>
    {
        var lab = CieLab.FromSrgb((byte)code, (byte)code, (byte)code);
        Assert.Equal(0, Math.Abs(lab.A) + Math.Abs(lab.B), 1e-9);
    });
}
