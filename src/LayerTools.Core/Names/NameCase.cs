namespace LayerTools.Names;

/// <summary>How the words of a name are written.</summary>
public enum NameCase
{
    /// <summary><c>Upper arm</c>: only the first word begins with a capital.</summary>
    Sentence,

    /// <summary><c>Upper Arm</c>.</summary>
    Title,

    /// <summary><c>upper arm</c>.</summary>
    Lower,

    /// <summary><c>UPPER ARM</c>.</summary>
    Upper,

    /// <summary><c>UpperArm</c>: words are joined without a separator.</summary>
    Pascal,

    /// <summary><c>upperArm</c>.</summary>
    Camel,
}
