namespace LayerTools.Formats.Psd;

/// <summary>How much of a file is encoded from the model.</summary>
internal enum PsdEncoding
{
    /// <summary>What the edits left alone is kept as it is stored: the mode for users' files.</summary>
    KeepUnchanged,

    /// <summary>Everything the model knows is encoded anew: the mode that proves that the model holds all of it.</summary>
    EncodeEverything,
}
