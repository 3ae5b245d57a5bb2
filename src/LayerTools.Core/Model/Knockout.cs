namespace LayerTools.Model;

/// <summary>How far down a layer cuts a hole in the shape of its pixels.</summary>
internal enum Knockout
{
    None,

    /// <summary>To what lies below the group it is in.</summary>
    ToGroup,

    /// <summary>To the backdrop of the whole picture.</summary>
    ToBottom,
}
