using System.Globalization;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>How a file drawn from its layers compares with the picture that the program that wrote it stored.</summary>
/// <param name="File">Path below the folder of real files.</param>
/// <param name="Mean">Mean difference of all samples, of 255.</param>
/// <param name="Max">Largest difference, of 255.</param>
/// <param name="Near">Part of the pixels whose samples are all within 3 of 255, 0 to 1.</param>
/// <param name="NotDrawn">What the compositor says it does not draw.</param>
/// <param name="Uses">What the file uses beyond plain layers.</param>
/// <param name="Reason">Why it cannot agree, though all of it is drawn; or null.</param>
internal sealed record TruthRow(string File, double Mean, int Max, double Near, IReadOnlyList<string> NotDrawn, string Uses, string? Reason)
{
    public const int NearDifference = 3;

    public bool IsTrue => Mean <= 1 && Near >= 0.99;

    /// <summary>What is not drawn, without naming layers, and the reason.</summary>
    public IEnumerable<string> Causes => NotDrawn.Select(line => line[(line.LastIndexOf(": ", StringComparison.Ordinal) + 2)..]).Concat(Reason is null ? [] : [Reason]);

    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{(IsTrue ? "ok " : "OFF")} {File,-58} {Mean,8:F3} {Max,4} {100 * Near,7:F2} %  {Uses}{(NotDrawn.Count == 0 ? "" : $"  [not drawn: {string.Join("; ", NotDrawn)}]")}{(IsTrue || Reason is null ? "" : $"  [{Reason}]")}");
}
