namespace LayerTools.Model;

/// <summary>How an outline joins the outlines before it.</summary>
internal enum PathOperation
{
    /// <summary>What is in one of both, not in both.</summary>
    Exclude,

    /// <summary>What is in any of both.</summary>
    Unite,

    /// <summary>What is in those before and not in this one.</summary>
    Subtract,

    /// <summary>What is in both.</summary>
    Intersect,
}
