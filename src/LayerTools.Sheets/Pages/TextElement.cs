using LayerTools.Model;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Pages;

/// <summary>One line of text that fits its area. The colour it stands on is told so that its contrast can be checked.</summary>
internal sealed record TextElement(Bounds Area, string Text, TextStyle Style, Rgb Color, Rgb Background, TextAlignment Alignment = TextAlignment.Start) : PageElement(Area);
