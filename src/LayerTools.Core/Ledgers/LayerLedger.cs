namespace LayerTools.Ledgers;

/// <summary>What is known of the parts of one layered file, kept beside it.</summary>
/// <param name="File">Name of the layered file.</param>
/// <param name="FileVersion">Fingerprint of all parts of the file as it was when the ledger was written.</param>
/// <param name="Entries">The parts, by path.</param>
public sealed record LayerLedger(string File, string FileVersion, IReadOnlyList<LedgerEntry> Entries)
{
    /// <summary>How the name of a ledger ends.</summary>
    public const string Extension = ".layerledger.json";

    /// <summary>The ledger beside a layered file: <c>hero.psd</c> has <c>hero.layerledger.json</c>.</summary>
    public static string FindPath(string layeredFile) => Path.Combine(Path.GetDirectoryName(layeredFile) ?? string.Empty, Path.GetFileNameWithoutExtension(layeredFile) + Extension);
}
