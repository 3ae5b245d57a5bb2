namespace LayerTools.Sheets.Reports;

/// <summary>A piece of a page in the temporary file.</summary>
/// <param name="Start">First byte.</param>
/// <param name="Length">Bytes.</param>
internal readonly record struct ReportPiece(long Start, long Length);
