namespace LayerTools.Measures.Budget;

/// <summary>What the parts of a file need as textures. 1 MB is 2^20 bytes; a pixel takes 4 bytes (red, green, blue, alpha).</summary>
public sealed record TextureBudget
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>Columns and rows of a page, px.</summary>
    public required int PageSize { get; init; }

    /// <summary>Free pixels around each part.</summary>
    public required int Padding { get; init; }

    /// <summary>Whether parts may be turned by 90°.</summary>
    public required bool Turn { get; init; }

    /// <summary>Parts with painted pixels.</summary>
    public required int Parts { get; init; }

    /// <summary>Pages that hold them.</summary>
    public required int Pages { get; init; }

    /// <summary>Pages that any packing needs, see <see cref="BoxPacker.FindFewestPages"/>; the padding counts.</summary>
    public required int FewestPages { get; init; }

    /// <summary>How much of the pages the boxes of the parts take, without padding, 0 to 100 %.</summary>
    public required double FillPercent { get; init; }

    /// <summary>Memory of all pages, MB: pages × size² × 4 bytes.</summary>
    public required double MemoryMB { get; init; }

    /// <summary>The same with all smaller pages down to 1 × 1 px, each half as large as the one before: together (4·size² − 1) / 3 pixels a page.</summary>
    public required double MipmapMemoryMB { get; init; }

    /// <summary>Memory of the boxes alone, as if pages had no gaps, MB.</summary>
    public required double PartsMB { get; init; }

    /// <summary>Pages at three quarters of the size; each box has its sides × 0.75, rounded up.</summary>
    public required int PagesAt75 { get; init; }

    /// <summary>How much less memory these pages take, MB, without mipmaps.</summary>
    public required double SavedMBAt75 { get; init; }

    /// <summary>Pages at half the size.</summary>
    public required int PagesAt50 { get; init; }

    /// <summary>How much less memory these pages take, MB, without mipmaps.</summary>
    public required double SavedMBAt50 { get; init; }

    /// <summary>The path of the part whose box is the largest; null without parts.</summary>
    public required string? LargestPart { get; init; }

    /// <summary>Its share of the area of all boxes, 0 to 100 %.</summary>
    public required double LargestPartPercent { get; init; }
}
