namespace LayerTools.Formats.Psd;

/// <summary>How the program that wrote a file does what the format leaves open, so that edits look as if it had made them.</summary>
/// <param name="Names">The code page of short names.</param>
/// <param name="NameFilling">What the length of a Unicode name block is a multiple of, 2 or 4.</param>
/// <param name="PadsBlocks">Whether blocks of a layer are filled up to a multiple of 4 outside their length.</param>
internal sealed record PsdHabits(LegacyNames Names, int NameFilling, bool PadsBlocks)
{
    public static PsdHabits OfNewFile { get; } = new(LegacyNames.Infer([]), 4, false);
}
