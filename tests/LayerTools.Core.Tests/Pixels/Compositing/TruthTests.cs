using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>The merged pictures inside real files, made by the programs that wrote them, against ours.</summary>
public class TruthTests(ITestOutputHelper output)
{
    /// <summary>Where the table is kept, beside the built tests.</summary>
    private const string TableName = "truth.txt";

    /// <summary>The part of the files that must be true.</summary>
    private const double Share = 0.9;

    [Fact]
    public void Files_are_drawn_as_the_programs_that_wrote_them_drew_them()
    {
        var rows = TruthTable.Measure();
        Assert.SkipWhen(rows.Count == 0, SharedFiles.Missing);
        var share = rows.Count(row => row.IsTrue) / (double)rows.Count;
        List<string> lines = [.. rows.OrderBy(row => row.IsTrue).ThenBy(row => row.Uses, StringComparer.Ordinal).Select(row => row.ToString())];
        lines.Add(FormattableString.Invariant($"{rows.Count(row => row.IsTrue)} of {rows.Count} files true ({100 * share:F1} %)"));
        var reasons = rows.Where(row => !row.IsTrue).SelectMany(row => row.Causes.Distinct()).GroupBy(cause => cause).OrderByDescending(group => group.Count());
        lines.AddRange(reasons.Select(group => FormattableString.Invariant($"off: {group.Count()} with {group.Key}")));
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, TableName), lines);
        foreach (var line in lines) output.WriteLine(line);

        Assert.InRange(share, Share, 1);
        // What is off is off for a reason: something that is not drawn, or one that is known.
        Assert.All(rows, row => Assert.True(row.IsTrue || row.NotDrawn.Count > 0 || row.Reason is not null, row.ToString()));
    }
}
