namespace LayerTools.Names;

/// <summary>The language that the words of a vocabulary are written in.</summary>
public enum NameLanguage
{
    /// <summary>English.</summary>
    English,

    /// <summary>Japanese.</summary>
    Japanese,
}
