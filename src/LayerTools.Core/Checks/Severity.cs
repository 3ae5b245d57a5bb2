namespace LayerTools.Checks;

/// <summary>How bad a finding is. The names are those of the levels of SARIF 2.1.0 (section 3.27.10), but that there <c>None</c> also stands for findings that were made.</summary>
public enum Severity
{
    /// <summary>The rule is not asked.</summary>
    None,

    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Should be put right.</summary>
    Warning,

    /// <summary>Has to be put right before the hand-over.</summary>
    Error,
}
