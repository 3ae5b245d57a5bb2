using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets;

/// <summary>What parts stand on: one colour, a board of two greys, or a light and a dark half.</summary>
public sealed class SheetBackground : IEquatable<SheetBackground>
{
    private SheetBackground(GroundPattern pattern, Rgb first, Rgb second) => (Pattern, First, Second) = (pattern, first, second);

    /// <summary>Mid grey, #777777: CIE L* = 50 (CIE 15, IEC 61966-2-1).</summary>
    public static SheetBackground Grey { get; } = new(GroundPattern.Plain, Rgb.FromNumber(0x777777), Rgb.FromNumber(0x777777));

    /// <summary>A board of two greys, close enough to stay quiet behind the parts.</summary>
    public static SheetBackground Checker { get; } = new(GroundPattern.Checker, Rgb.FromNumber(0x7c7c7c), Rgb.FromNumber(0x949494));

    /// <summary>A light half on the left and a dark one on the right, so that soft edges and halos show on one of the two.</summary>
    public static SheetBackground Halves { get; } = new(GroundPattern.Halves, Rgb.FromNumber(0xe6e6e6), Rgb.FromNumber(0x262626));

    internal GroundPattern Pattern { get; }

    internal Rgb First { get; }

    internal Rgb Second { get; }

    /// <summary>Reads <c>grey</c> (or <c>gray</c>), <c>checker</c>, <c>halves</c>, <c>#rrggbb</c> or <c>#rgb</c>; case does not matter.</summary>
    /// <exception cref="SheetException">The text is none of these.</exception>
    public static SheetBackground Parse(string text)
    {
        if (text is null) throw new ArgumentNullException(nameof(text));
        if (text.Equals("grey", StringComparison.OrdinalIgnoreCase) || text.Equals("gray", StringComparison.OrdinalIgnoreCase)) return Grey;
        if (text.Equals("checker", StringComparison.OrdinalIgnoreCase)) return Checker;
        if (text.Equals("halves", StringComparison.OrdinalIgnoreCase)) return Halves;
        if (Rgb.TryParseHex(text, out var color)) return new SheetBackground(GroundPattern.Plain, color, color);
        throw SheetException.Refuse(null, $"'{text}' is no background.", "Use grey, checker, halves, or a colour such as #777777 or #fff.");
    }

    /// <inheritdoc/>
    public bool Equals(SheetBackground? other) => other is not null && Pattern == other.Pattern && First == other.First && Second == other.Second;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as SheetBackground);

    /// <inheritdoc/>
    public override int GetHashCode() => (Pattern, First, Second).GetHashCode();

    /// <inheritdoc/>
    public override string ToString() => Pattern switch
    {
        GroundPattern.Checker => "checker",
        GroundPattern.Halves => "halves",
        _ => First.ToString(),
    };
}
