using System.Globalization;

namespace LayerTools.Edits;

/// <summary>
/// Numbers for new names: the layers that are renamed count up in stack order, front to back.
/// The number takes the place of <c>{n}</c> in the new name; a name without <c>{n}</c> gets it at its end, after a space unless the name ends in a delimiter.
/// </summary>
public sealed record Numbering
{
    /// <summary>What stands for the number in a new name.</summary>
    public const string Placeholder = "{n}";

    /// <param name="start">The front-most layer's number, 0 or more.</param>
    /// <param name="width">Fewest digits, 1 to 9, filled up with zeros.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public Numbering(int start = 1, int width = 1)
    {
        if (start is < 0 or > 999_999_999) throw new ArgumentOutOfRangeException(nameof(start), start, "The first number is 0 to 999,999,999.");
        if (width is < 1 or > 9) throw new ArgumentOutOfRangeException(nameof(width), width, "A number has at least 1 and at most 9 digits.");
        Start = start;
        Width = width;
    }

    /// <summary>The front-most layer's number.</summary>
    public int Start { get; }

    /// <summary>Fewest digits.</summary>
    public int Width { get; }

    internal string Apply(string name, int number)
    {
        var digits = number.ToString("D" + Width.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        if (name.Contains(Placeholder)) return name.Replace(Placeholder, digits);
        return name.Length > 0 && char.IsLetterOrDigit(name[name.Length - 1]) ? $"{name} {digits}" : name + digits;
    }
}
