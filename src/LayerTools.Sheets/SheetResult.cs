namespace LayerTools.Sheets;

/// <summary>What writing a sheet did.</summary>
/// <param name="Paths">The files written, in page order.</param>
/// <param name="PartCount">Cells on all pages.</param>
/// <param name="PageCount">Pages; a PDF holds several in one file.</param>
/// <param name="Warnings">What the user should know, as sentences.</param>
public sealed record SheetResult(IReadOnlyList<string> Paths, int PartCount, int PageCount, IReadOnlyList<string> Warnings);
