using LayerTools.Measures.Cover;

namespace LayerTools.Checks.Rules;

/// <summary>A part that ends at, or shortly behind, the edge of a part in front of it: when one of them moves, a gap opens between them.</summary>
internal sealed class NotPaintedUnderneath : CheckRule
{
    /// <summary>Shorter stretches, in px per px of the limit, are specks and ragged edges and not what somebody forgot to paint, unless they make up half of what counts of a seam.</summary>
    private const double LeastStretch = 2;

    /// <summary>So long at least, px.</summary>
    private const double ShortestStretch = 8;

    /// <summary>So much of what counts of a seam at least, per cent.</summary>
    private const double LeastPercent = 5;

    /// <summary>Neighbours that a message names.</summary>
    private const int MostNamed = 3;

    public override string Id => nameof(NotPaintedUnderneath);

    public override string Title => "The part is not painted on underneath a neighbour";

    public override string Reason =>
        "When a part moves, the edge of what it covered comes to light, so each part is painted on underneath the parts in front of it (common practice; how far depends on the "
        + "movement, the limit is this module's own choice). Measured along the seam as Measure-LayerCover does; stretches too short to matter and parts that show what lies behind them are left out.";

    public override Severity DefaultSeverity => Severity.Warning;

    public override double? DefaultLimit => CoverOptions.UsualPercent;

    public override string LimitUnit => "% of the longer side of the canvas";

    public override bool NeedsPixels => true;

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var wanted = Math.Min(CoverOptions.DeepestDepth, CoverOptions.DepthOf(context.File, LimitFor(context)));
        if (wanted <= 0) return [];
        var options = new CoverOptions { WantedDepth = wanted, MaximumDepth = (int)Math.Ceiling(wanted) };
        var cover = FigureCover.Measure(context.File, CoverPart.Of(context.Survey, includeHidden: false), part => part.Hides, options, seam => IsOpen(seam, wanted), context.Cancellation);
        return cover.Seams.GroupBy(seam => seam.LayerNumber).Select(seams => Tell(context, [.. seams.OrderByDescending(seam => seam.ShallowLength)], wanted)).ToList();
    }

    private static bool IsOpen(SeamCover seam, double wanted) =>
        seam.ShallowLength >= Math.Max(ShortestStretch, Math.Max(Math.Min(LeastStretch * wanted, seam.CountedLength / 2.0), seam.CountedLength * LeastPercent / 100));

    /// <param name="context">The file.</param>
    /// <param name="seams">The seams of one part that would open, the longest first.</param>
    /// <param name="wanted">How far the part should be painted on, px.</param>
    private Finding Tell(CheckContext context, IReadOnlyList<SeamCover> seams, double wanted)
    {
        var worst = seams[0];
        var layer = context.File.GetLayers().First(other => other.LayerNumber == worst.LayerNumber);
        var named = string.Join(", ", seams.Take(MostNamed).Select(seam => $"'{seam.Neighbour}'"));
        var more = seams.Count > MostNamed ? FormattableString.Invariant($" and {seams.Count - MostNamed} more") : string.Empty;
        return Find(
            context,
            layer,
            FormattableString.Invariant($"'{worst.LayerPath}' is not painted on far enough underneath {named}{more}; with '{worst.Neighbour}' at least {worst.ShallowLength} of {worst.SeamLength} px of the seam would open."),
            FormattableString.Invariant($"Paint '{worst.LayerPath}' on underneath '{worst.Neighbour}' by {wanted:0.#} px, around {worst.X}, {worst.Y}. To see all seams: ")
                + Remedy.Show(context.File, $"Measure-LayerCover -By Neighbour {Remedy.Choose(layer)}"),
            FormattableString.Invariant($"{worst.SmallestDepth:0.#} px"),
            FormattableString.Invariant($"{wanted:0.#} px"));
    }
}
