namespace LayerTools.Sheets.Pages;

/// <summary>The small shape beside the words of a state, so that states can be told apart without colours.</summary>
internal enum StateShape
{
    /// <summary>Finished: a filled disc.</summary>
    Disc,

    /// <summary>Open: a ring around a dot.</summary>
    Ring,

    /// <summary>Nothing says how far it is: a square.</summary>
    Square,

    /// <summary>No part of the figure: a bar.</summary>
    Bar,

    /// <summary>Missing: a cross.</summary>
    Cross,
}
