namespace LayerTools.Formats.Psd;

/// <summary>How the program that wrote a file does what the format leaves open, so that edits look as if it had made them.</summary>
/// <param name="findNames">Finds the code page of short names; trying them all is put off until one is needed.</param>
/// <param name="nameFilling">See <see cref="NameFilling"/>.</param>
/// <param name="padsBlocks">See <see cref="PadsBlocks"/>.</param>
internal sealed class PsdHabits(Func<LegacyNames> findNames, int nameFilling, bool padsBlocks)
{
    private readonly Lazy<LegacyNames> names = new(findNames);

    public static PsdHabits OfNewFile { get; } = new(() => LegacyNames.Infer([]), 4, false);

    /// <summary>The code page of short names.</summary>
    public LegacyNames Names => names.Value;

    /// <summary>What the length of a Unicode name block is a multiple of, 2 or 4.</summary>
    public int NameFilling { get; } = nameFilling;

    /// <summary>Whether blocks of a layer are filled up to a multiple of 4 outside their length.</summary>
    public bool PadsBlocks { get; } = padsBlocks;
}
