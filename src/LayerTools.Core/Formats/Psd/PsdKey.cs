using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Four-character codes as the numbers they are stored as.</summary>
internal static class PsdKey
{
    public static readonly uint Signature = Parse("8BIM");
    public static readonly uint WideSignature = Parse("8B64");

    /// <summary>Blocks whose length takes 8 bytes in PSB files, whichever signature they carry.</summary>
    private static readonly HashSet<uint> WideBlocks =
    [
        .. new[]
        {
            "LMsk", "Lr16", "Lr32", "Layr", "Mt16", "Mt32", "Mtrn", "Alph", "FMsk", "lnk2", "lnkE", "FEid", "FXid", "PxSD",
            "cinf", "lnk3", "FELS", "pths", "extd", "extn", "artd",
        }.Select(Parse),
    ];

    public static uint Parse(string key) => (uint)(key[0] << 24 | key[1] << 16 | key[2] << 8 | key[3]);

    public static string Format(uint key) => new([Printable(key >> 24), Printable(key >> 16), Printable(key >> 8), Printable(key)]);

    public static bool HasWideLength(uint signature, uint key, FileFormat format) =>
        format == FileFormat.Psb && (signature == WideSignature || WideBlocks.Contains(key));

    private static char Printable(uint value) => (char)(value & 255) is >= ' ' and < (char)127 and var c ? c : '?';
}
