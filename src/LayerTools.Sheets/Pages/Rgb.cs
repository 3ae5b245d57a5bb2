using System.Globalization;

namespace LayerTools.Sheets.Pages;

/// <summary>An opaque sRGB colour.</summary>
internal readonly record struct Rgb(byte R, byte G, byte B)
{
    public static Rgb Black => new(0, 0, 0);

    public static Rgb White => new(255, 255, 255);

    /// <summary>A colour from 0xRRGGBB.</summary>
    public static Rgb FromNumber(int number) => new((byte)(number >> 16), (byte)(number >> 8), (byte)number);

    public static bool TryParseHex(string text, out Rgb color)
    {
        color = default;
        var digits = text.TrimStart('#');
        // Each digit of the short form stands for two (CSS Color Module Level 4, 'The RGB Hexadecimal Notations').
        if (digits.Length == 3 && text.Length == 4) digits = string.Concat(digits.Select(digit => new string(digit, 2)));
        else if (digits.Length != 6 || text.Length != 7) return false;
        if (!int.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var number)) return false;
        color = FromNumber(number);
        return true;
    }

    public override string ToString() => FormattableString.Invariant($"#{R:x2}{G:x2}{B:x2}");
}
