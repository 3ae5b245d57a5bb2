using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Support;

/// <summary>Every visible character is half its size wide.</summary>
internal sealed class FakeRuler : ITextRuler
{
    public double Measure(string text, TextStyle style) => Graphemes.Split(text).Count * style.Size / 2.0;
}
