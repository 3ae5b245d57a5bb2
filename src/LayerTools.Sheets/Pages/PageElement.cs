using LayerTools.Model;

namespace LayerTools.Sheets.Pages;

/// <summary>Something that stands on a page. Areas are in page px.</summary>
internal abstract record PageElement(Bounds Area);
