namespace LayerTools.Sheets.Reports;

/// <summary>What a report measures beside status and findings.</summary>
public enum ReportMeasure
{
    /// <summary>How well pairs, central parts and the figure agree with their reflections.</summary>
    Symmetry,

    /// <summary>How far parts are painted on underneath those that cover them.</summary>
    Cover,

    /// <summary>How much detail the figure has on the profile's screens.</summary>
    Detail,

    /// <summary>What the parts need as textures.</summary>
    Budget,
}
