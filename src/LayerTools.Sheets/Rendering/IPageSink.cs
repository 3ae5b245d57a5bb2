using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Rendering;

/// <summary>Takes pages one after the other and turns them into files. Until <see cref="Commit"/> nothing is at its final place; disposed before, nothing stays.</summary>
internal interface IPageSink : IDisposable
{
    void Add(SheetPage page);

    /// <summary>Puts the files in their places.</summary>
    /// <returns>Their paths, in page order.</returns>
    IReadOnlyList<string> Commit();
}
