namespace LayerTools.Sheets;

/// <summary>How large parts are shown.</summary>
public enum SheetScale
{
    /// <summary>Each as large as its cell allows.</summary>
    Fit,

    /// <summary>All at one scale, at which the largest fits.</summary>
    Common,
}
