namespace LayerTools.Sheets;

/// <summary>How a part is shown.</summary>
public enum SheetView
{
    /// <summary>The part trimmed to its rectangle.</summary>
    Alone,

    /// <summary>The whole figure faded, with the part in full strength.</summary>
    InPlace,

    /// <summary>The one beside the other.</summary>
    Both,
}
