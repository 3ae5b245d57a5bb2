namespace LayerTools.Profiles;

/// <summary>What a mark on a layer means.</summary>
public enum MarkMeaning
{
    /// <summary>The part is not finished.</summary>
    Open,

    /// <summary>The part is finished.</summary>
    Done,

    /// <summary>The part has to be looked at again.</summary>
    Recheck,
}
