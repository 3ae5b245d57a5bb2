using System.Globalization;

namespace LayerTools.Sheets;

/// <summary>The size of a page: a sheet of paper, a screen, or any number of pixels.</summary>
public sealed record SheetPageSize
{
    /// <summary>Shortest side of a page, px of the layout.</summary>
    public const int Smallest = 300;

    /// <summary>Longest side of a page, px of the layout.</summary>
    public const int Largest = 16000;

    private const double PixelsPerMillimetre = 96 / 25.4;

    private SheetPageSize(string name, int width, int height, bool isPaper) => (Name, Width, Height, IsPaper) = (name, width, height, isPaper);

    /// <summary>210 × 297 mm (ISO 216).</summary>
    public static SheetPageSize A4 { get; } = new("A4", 794, 1123, true);

    /// <summary>297 × 420 mm (ISO 216).</summary>
    public static SheetPageSize A3 { get; } = new("A3", 1123, 1587, true);

    /// <summary>8.5 × 11 inches (ANSI/ASME Y14.1, size A).</summary>
    public static SheetPageSize Letter { get; } = new("Letter", 816, 1056, true);

    /// <summary>1920 × 1080 px.</summary>
    public static SheetPageSize Screen { get; } = new("Screen", 1920, 1080, false);

    /// <summary>How it is called.</summary>
    public string Name { get; }

    /// <summary>Columns of the layout, px of 1/96 inch.</summary>
    public int Width { get; private init; }

    /// <summary>Rows of the layout, px of 1/96 inch.</summary>
    public int Height { get; private init; }

    /// <summary>Whether it is printed: then a page has two stored pixels for each of the layout, which is 192 an inch.</summary>
    public bool IsPaper { get; }

    internal int Density => IsPaper ? 2 : 1;

    /// <summary>Reads <c>A4</c>, <c>A3</c>, <c>Letter</c>, <c>Screen</c> or <c>1600x1200</c> (px); case does not matter.</summary>
    /// <exception cref="SheetException">The text is none of these.</exception>
    public static SheetPageSize Parse(string text)
    {
        if (text is null) throw new ArgumentNullException(nameof(text));
        if (Array.Find([A4, A3, Letter, Screen], size => size.Name.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } known) return known;
        var sides = text.ToLowerInvariant().Split('x', '\u00D7');
        if (sides.Length == 2 && TryRead(sides[0], out var width) && TryRead(sides[1], out var height)) return new SheetPageSize(FormattableString.Invariant($"{width}x{height}"), width, height, false);
        throw SheetException.Refuse(null, $"'{text}' is no size of a page.",
            FormattableString.Invariant($"Use A4, A3, Letter, Screen, or pixels such as 1600x1200, each {Smallest} to {Largest}."));
    }

    /// <summary>The same page lying on its long side, or standing on its short one.</summary>
    public SheetPageSize Turn(bool landscape) => landscape == Width > Height ? this : this with { Width = Height, Height = Width };

    /// <summary>A margin in px of the layout.</summary>
    /// <param name="margin">Millimetres on paper, px otherwise.</param>
    internal int GetMargin(int margin) => IsPaper ? (int)Math.Round(margin * PixelsPerMillimetre) : margin;

    private static bool TryRead(string text, out int side) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out side) && side is >= Smallest and <= Largest;
}
