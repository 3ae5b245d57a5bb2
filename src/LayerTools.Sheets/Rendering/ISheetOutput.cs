using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Rendering;

/// <summary>Takes the cells of one page after the other. Until <see cref="Commit"/> nothing is at its final place; disposed before, nothing stays.</summary>
internal interface ISheetOutput : IDisposable
{
    void Add(int page, IReadOnlyList<PageCell> cells);

    /// <summary>Puts the files in their places.</summary>
    /// <returns>Their paths, in page order.</returns>
    IReadOnlyList<string> Commit();
}
