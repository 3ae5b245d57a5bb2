namespace LayerTools.Names;

/// <summary>How the names of a figure's layers are written.</summary>
public sealed record NamingStyle
{
    /// <summary>What stands between words, side and number; may be empty only where the case tells words apart.</summary>
    public string Separator { get; init; } = " ";

    /// <summary>How words are written.</summary>
    public NameCase Case { get; init; } = NameCase.Sentence;

    /// <summary>The language of the words that are written.</summary>
    public NameLanguage Language { get; init; } = NameLanguage.English;

    /// <summary>Fewest digits of a number, 1 to 9; shorter ones get zeros in front.</summary>
    public int NumberDigits { get; init; } = 1;

    /// <summary>The number of the first of several layers of one name, 0 or more.</summary>
    public int FirstNumber { get; init; } = 1;

    /// <summary>The longest name, UTF-16 units, 1 to 255.</summary>
    public int LongestName { get; init; } = 63;

    /// <summary>How sides are read and written.</summary>
    public SideStyle Sides { get; init; } = new();

    /// <summary>The words for parts.</summary>
    public Vocabulary Vocabulary { get; init; } = Vocabulary.Empty;
}
