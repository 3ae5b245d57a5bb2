namespace LayerTools.Sheets.Parts;

/// <summary>How far a part is.</summary>
internal enum PartProgress
{
    /// <summary>It carries no mark that means finished, while others in the file carry marks.</summary>
    Open,

    /// <summary>No layer of the file carries a mark.</summary>
    Unknown,

    /// <summary>It carries a mark that means finished.</summary>
    Done,

    /// <summary>It is empty, or a backdrop, a sketch or a guide.</summary>
    NotCounted,
}
