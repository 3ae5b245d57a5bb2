using LayerTools.Pixels;

namespace LayerTools.Measures.Budget;

/// <summary>Digits of 3 × 5 dots for numbers in pictures, since text needs fonts and those need native code.</summary>
internal static class PixelDigits
{
    private const int Columns = 3;
    private const int Rows = 5;

    /// <summary>Five rows of three dots for each digit, the first row in the highest bits.</summary>
    private static readonly int[] Dots = [0x7B6F, 0x2C97, 0x73E7, 0x73CF, 0x5BC9, 0x79CF, 0x79EF, 0x7249, 0x7BEF, 0x7BCF];

    /// <summary>Columns that a number takes with a dot of air around it, px.</summary>
    public static int Width(string digits, int dot) => ((digits.Length * (Columns + 1)) + 1) * dot;

    public static int Height(int dot) => (Rows + 2) * dot;

    /// <summary>Writes a number, white on black; what lies outside the picture is left out.</summary>
    public static void Draw(Raster raster, string digits, int left, int top, int dot)
    {
        for (var y = 0; y < Height(dot); y++)
        {
            for (var x = 0; x < Width(digits, dot); x++)
            {
                if (left + x < 0 || left + x >= raster.Width || top + y < 0 || top + y >= raster.Height) continue;
                var shade = IsSet(digits, (x / dot) - 1, (y / dot) - 1) ? byte.MaxValue : (byte)0;
                var pixel = raster.Row(top + y).Slice(4 * (left + x), 4);
                (pixel[0], pixel[1], pixel[2], pixel[3]) = (shade, shade, shade, byte.MaxValue);
            }
        }
    }

    private static bool IsSet(string digits, int column, int row)
    {
        if (column < 0 || row is < 0 or >= Rows || column / (Columns + 1) >= digits.Length || column % (Columns + 1) == Columns) return false;
        var bit = ((Rows - 1 - row) * Columns) + Columns - 1 - (column % (Columns + 1));
        return (Dots[digits[column / (Columns + 1)] - '0'] >> bit & 1) != 0;
    }
}
