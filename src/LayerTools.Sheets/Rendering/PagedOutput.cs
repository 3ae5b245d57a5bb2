using LayerTools.Sheets.Pages;

namespace LayerTools.Sheets.Rendering;

/// <summary>Sets cells on pages.</summary>
internal sealed class PagedOutput(PageComposer composer, SheetHeading heading, IPageSink sink) : ISheetOutput
{
    public void Add(int page, IReadOnlyList<PageCell> cells) => sink.Add(composer.Compose(page, heading, cells));

    public IReadOnlyList<string> Commit() => sink.Commit();

    public void Dispose() => sink.Dispose();
}
