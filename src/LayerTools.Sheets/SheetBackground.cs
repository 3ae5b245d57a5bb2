using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets;

/// <summary>What parts stand on: one colour, or a board of two greys.</summary>
public sealed class SheetBackground : IEquatable<SheetBackground>
{
    private SheetBackground(Rgb first, Rgb second)
    {
        First = first;
        Second = second;
    }

    /// <summary>Mid grey, #777777: CIE L* = 50 (CIE 15, IEC 61966-2-1).</summary>
    public static SheetBackground Grey { get; } = new(Rgb.FromNumber(0x777777), Rgb.FromNumber(0x777777));

    /// <summary>A board of two greys, close enough to stay quiet behind the parts.</summary>
    public static SheetBackground Checker { get; } = new(Rgb.FromNumber(0x7c7c7c), Rgb.FromNumber(0x949494));

    internal Rgb First { get; }

    internal Rgb Second { get; }

    /// <summary>Reads <c>grey</c> (or <c>gray</c>), <c>checker</c> or <c>#rrggbb</c>; case does not matter.</summary>
    /// <exception cref="SheetException">The text is none of these.</exception>
    public static SheetBackground Parse(string text)
    {
        if (text is null) throw new ArgumentNullException(nameof(text));
        if (text.Equals("grey", StringComparison.OrdinalIgnoreCase) || text.Equals("gray", StringComparison.OrdinalIgnoreCase)) return Grey;
        if (text.Equals("checker", StringComparison.OrdinalIgnoreCase)) return Checker;
        if (Rgb.TryParseHex(text, out var color)) return new SheetBackground(color, color);
        throw SheetException.Refuse(null, $"'{text}' is no background.", "Use grey, checker, or a colour such as #777777.");
    }

    /// <inheritdoc/>
    public bool Equals(SheetBackground? other) => other is not null && First == other.First && Second == other.Second;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as SheetBackground);

    /// <inheritdoc/>
    public override int GetHashCode() => (First, Second).GetHashCode();

    /// <inheritdoc/>
    public override string ToString() => Equals(Checker) ? "checker" : First.ToString();
}
