namespace LayerTools.Sheets.Text;

/// <summary>Says how wide text will be.</summary>
internal interface ITextRuler
{
    /// <summary>Width of one line, px.</summary>
    double Measure(string text, TextStyle style);
}
