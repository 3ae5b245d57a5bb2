using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Checks;

/// <summary>
/// The figure's own centre line, as its parts tell it: the middles between the boxes of pairs of the same size, and the middles of parts without a side whose box and
/// whose weight have the same middle, copies at one place once. Where a pose or a lantern moves some of them elsewhere, the place where most agree counts.
/// </summary>
internal static class FigureAxis
{
    /// <summary>The fewest parts or pairs that have to agree.</summary>
    private const int Fewest = 3;

    /// <summary>The least share of them that has to agree.</summary>
    private const double LeastShare = 1.0 / 3;

    /// <summary>How far those that agree may lie apart: 4 px, or this share of the canvas width.</summary>
    private const double Spread = 0.002;

    private const double LeastSpread = 4;

    /// <summary>How far a part's weight may lie beside the middle of its box: 1 px, or this share of its width.</summary>
    private const double Leaning = 0.005;

    /// <summary>The x of the line, canvas px; null if too few parts agree on one.</summary>
    public static double? Find(FigureSurvey survey, IReadOnlyList<PartPair> pairs, LayerFile file)
    {
        var doubled = pairs.Where(pair => pair.HasSameBox).Select(pair => pair.DoubledMiddle)
            .Concat(survey.Parts.Where(IsUpright).Select(part => part.Seen).Distinct().Select(box => box.Left + (double)box.Right))
            .OrderBy(value => value).ToList();
        var spread = 2 * Math.Max(LeastSpread, Spread * file.Width);
        var (best, count) = (0, 0);
        for (var (first, end) = (0, 0); first < doubled.Count; first++)
        {
            while (end < doubled.Count && doubled[end] - doubled[first] <= spread) end++;
            if (end - first > count) (best, count) = (first, end - first);
        }

        if (count < Fewest || count < LeastShare * doubled.Count) return null;
        return (doubled[best + ((count - 1) / 2)] + doubled[best + (count / 2)]) / 4;
    }

    private static bool IsUpright(PartSurvey part) =>
        part is { IsPart: true, IsEmpty: false } && Opposites.SideOf(part.Layer) == Side.None
        && Math.Abs(part.CenterX - ((part.Seen.Left + (double)part.Seen.Right) / 2)) <= Math.Max(1, Leaning * part.Seen.Width);
}
