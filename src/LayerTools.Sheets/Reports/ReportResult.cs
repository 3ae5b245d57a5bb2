namespace LayerTools.Sheets.Reports;

/// <summary>A report that was written.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="FileCount">Files that were read.</param>
/// <param name="FailureCount">Files that could not be read.</param>
/// <param name="Bytes">How large it is.</param>
public sealed record ReportResult(string Path, int FileCount, int FailureCount, long Bytes);
