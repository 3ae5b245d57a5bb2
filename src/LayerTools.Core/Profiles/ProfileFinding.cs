using LayerTools.Checks;

namespace LayerTools.Profiles;

/// <summary>Something that is wrong with a profile. Plain values, so that tables, CSV and JSON stay readable.</summary>
public sealed record ProfileFinding
{
    /// <summary><see cref="Checks.Severity.Error"/> where the profile cannot be used, <see cref="Checks.Severity.Warning"/> where it can but hardly says what is meant.</summary>
    public required Severity Severity { get; init; }

    /// <summary>The value that is meant, as a JSONPath (RFC 9535): <c>$.canvas.width</c>; <c>$</c> for the whole profile.</summary>
    public required string JsonPath { get; init; }

    /// <summary>The line where the value begins, from 1.</summary>
    public required int Line { get; init; }

    /// <summary>Where in the line it begins, UTF-16 units, from 1.</summary>
    public required int Column { get; init; }

    /// <summary>What is wrong, as a sentence.</summary>
    public required string Message { get; init; }

    /// <summary>What to do, as a sentence.</summary>
    public required string Remedy { get; init; }

    /// <summary>The file, or the name of a profile that ships with the module.</summary>
    public required string FilePath { get; init; }
}
