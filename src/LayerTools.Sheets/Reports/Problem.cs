using LayerTools.Errors;

namespace LayerTools.Sheets.Reports;

/// <summary>Tells an error in a page that others read: without the folder the file lies in.</summary>
internal static class Problem
{
    /// <summary>What is wrong and what to do, and where in the file.</summary>
    public static string Describe(LayeredFileException error)
    {
        var place = error.Offset < 0 ? error.Section : FormattableString.Invariant($"{error.Section}, byte {error.Offset}");
        return $"{char.ToUpperInvariant(place[0])}{place.Substring(1)}: {error.Problem} {error.Remedy}".TrimEnd();
    }
}
