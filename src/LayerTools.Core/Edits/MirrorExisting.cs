namespace LayerTools.Edits;

/// <summary>What happens to a part whose opposite is in the file already.</summary>
public enum MirrorExisting
{
    /// <summary>The part is left alone.</summary>
    Skip,

    /// <summary>The opposite is replaced by the reflection; it keeps its id, its name and its place, and loses its mark.</summary>
    Replace,

    /// <summary>The edit is refused.</summary>
    Error,
}
