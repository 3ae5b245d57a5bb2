namespace LayerTools.Model.Effects;

/// <summary>On which side of the layer's edge an outline lies.</summary>
internal enum OutlinePlace
{
    /// <summary>Inside.</summary>
    Inside,

    /// <summary>Half on either side.</summary>
    Centre,

    /// <summary>Outside.</summary>
    Outside,
}
