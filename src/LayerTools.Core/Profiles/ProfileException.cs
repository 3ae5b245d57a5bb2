using LayerTools.Checks;
using LayerTools.Errors;

namespace LayerTools.Profiles;

/// <summary>A profile that cannot be used. The message tells the first error with its place.</summary>
public sealed class ProfileException : LayeredFileException
{
    /// <param name="findings">What is wrong, errors among it.</param>
    internal ProfileException(IReadOnlyList<ProfileFinding> findings)
        : this(findings, findings.Where(finding => finding.Severity == Severity.Error).ToList())
    {
    }

    private ProfileException(IReadOnlyList<ProfileFinding> findings, List<ProfileFinding> errors)
        : base(LayeredFileErrorKind.BadProfile, errors[0].FilePath, FormattableString.Invariant($"{errors[0].JsonPath}, line {errors[0].Line}, column {errors[0].Column}"), -1,
            errors[0].Message, errors.Count == 1 ? errors[0].Remedy : FormattableString.Invariant($"{errors[0].Remedy} Errors in all: {errors.Count}; Test-LayerProfile lists them."))
    {
        Findings = findings;
    }

    /// <summary>All that is wrong, in the order of the text.</summary>
    public IReadOnlyList<ProfileFinding> Findings { get; }
}
