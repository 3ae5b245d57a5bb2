using System.Text.RegularExpressions;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Checks;

/// <summary>Asks a file the questions of a profile.</summary>
public static class LayerFileChecker
{
    /// <summary>
    /// What the rules find, pending edits included. First what concerns the whole file, then layer by layer, front to back; for one layer the worst first, then by rule.
    /// Severities and limits are those of the profile; a rule that it switches off is not asked. The pixels of each part are unpacked once for all rules, and only if a rule
    /// needs them.
    /// </summary>
    /// <param name="file">The file.</param>
    /// <param name="profile">What the file has to be like.</param>
    /// <param name="rules">The rules to ask; null for all of <see cref="CheckRules.All"/>.</param>
    /// <param name="cancellation">Ends the work early.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the file changed on disk, or its colours cannot be drawn; there are no findings then.</exception>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public static IReadOnlyList<Finding> Check(LayerFile file, LayerProfile profile, IReadOnlyList<CheckRule>? rules = null, CancellationToken cancellation = default)
    {
        var context = new CheckContext(file, profile, cancellation);
        var findings = new List<Finding>();
        try
        {
            foreach (var rule in rules ?? CheckRules.All)
            {
                cancellation.ThrowIfCancellationRequested();
                if (rule.SeverityIn(profile) != Severity.None) findings.AddRange(rule.Check(context));
            }
        }
        catch (RegexMatchTimeoutException error)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, "layers", -1,
                $"The pattern '{error.Pattern}' took too long.", "Make the names of the layers simpler.", error);
        }

        return [.. findings
            .OrderBy(finding => finding.LayerNumber ?? 0)
            .ThenByDescending(finding => finding.Severity)
            .ThenBy(finding => finding.Rule, StringComparer.Ordinal)];
    }
}
