using LayerTools.Model;

namespace LayerTools.Ledgers;

/// <summary>
/// What makes two entries entries of one part where no layered file is at hand. Several layers may have one path; then ids tell them apart, and where there are no ids
/// what they hold and where it lies.
/// </summary>
internal sealed record LedgerKey(string LayerPath, int? Id, string Content, Bounds Painted)
{
    public static LedgerKey Of(LedgerEntry entry) => entry.Id is null ? new(entry.LayerPath, null, $"{entry.Pixels} {entry.Mask}", entry.Painted) : new(entry.LayerPath, entry.Id, string.Empty, Bounds.Empty);
}
