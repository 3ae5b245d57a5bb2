namespace LayerTools.Measures.Budget;

/// <summary>What one record of a texture budget is about.</summary>
public enum BudgetGrouping
{
    /// <summary>A file.</summary>
    File,

    /// <summary>A page of textures.</summary>
    Page,

    /// <summary>A part.</summary>
    Part,
}
