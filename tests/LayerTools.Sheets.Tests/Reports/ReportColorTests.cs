using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Reports;

namespace LayerTools.Sheets.Tests.Reports;

/// <summary>WCAG 2.2, success criterion 1.4.3: text has a contrast of at least 4.5:1.</summary>
public sealed class ReportColorTests
{
    [Fact]
    public void Every_ink_can_be_read_on_every_paper_in_both_schemes()
    {
        foreach (var paper in ReportColor.Papers)
        {
            foreach (var ink in ReportColor.Inks)
            {
                Assert.True(Contrast.Ratio(ink.Light, paper.Light) >= Contrast.Minimum, $"{ink.Name} on {paper.Name}, light: {Contrast.Ratio(ink.Light, paper.Light):0.00}");
                Assert.True(Contrast.Ratio(ink.Dark, paper.Dark) >= Contrast.Minimum, $"{ink.Name} on {paper.Name}, dark: {Contrast.Ratio(ink.Dark, paper.Dark):0.00}");
            }
        }
    }

    [Fact]
    public void Every_shape_differs_from_all_others()
    {
        Assert.Equal(ReportSign.All.Count, ReportSign.All.Select(sign => sign.Drawing).Distinct().Count());
        Assert.Equal(ReportSign.All.Count, ReportSign.All.Select(sign => sign.Id).Distinct().Count());
    }
}
