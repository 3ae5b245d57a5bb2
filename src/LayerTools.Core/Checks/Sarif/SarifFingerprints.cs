using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LayerTools.Images;

namespace LayerTools.Checks.Sarif;

/// <summary>
/// Marks by which a system knows a finding again in a later run: a digest of rule, file name, layer path, and which one it is of those that share all that. Neither folder nor
/// measured value counts, so that the mark outlives a move to another machine and small changes.
/// </summary>
internal sealed class SarifFingerprints
{
    /// <summary>The name under which the mark stands; its version counts up when the recipe changes (section 3.27.17).</summary>
    public const string Name = "ruleAndLayer/v1";

    private const int DigestBytes = 16;

    private readonly Dictionary<string, int> counts = new(StringComparer.Ordinal);

    /// <summary>The mark of the next finding of one file.</summary>
    public string Next(Finding finding)
    {
        var text = string.Join("\n", finding.Rule, Path.GetFileName(finding.FilePath), finding.LayerPath ?? string.Empty);
        counts[text] = counts.TryGetValue(text, out var count) ? count + 1 : 1;
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        digest.AppendData(Encoding.UTF8.GetBytes(WellFormed.Of(text) + "\n" + counts[text].ToString(CultureInfo.InvariantCulture)));
        return string.Concat(digest.GetHashAndReset().Take(DigestBytes).Select(part => part.ToString("x2", CultureInfo.InvariantCulture)));
    }
}
