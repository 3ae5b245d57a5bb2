using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Measures.Cover;

/// <summary>How cover is measured.</summary>
public sealed record CoverOptions
{
    /// <summary>The farthest that <see cref="MaximumDepth"/> may be, px.</summary>
    public const int DeepestDepth = 256;

    /// <summary>
    /// How far a part should be painted on underneath a neighbour, in per cent of the longer side of the canvas: 9 px on a canvas of 5000 × 6000 px. That parts are painted on
    /// underneath is common practice; how far is this module's own choice, since it depends on how far they move.
    /// </summary>
    public const double UsualPercent = 0.15;

    /// <summary>Depths are measured up to this many px, 1 to <see cref="DeepestDepth"/>; what is deeper counts as that deep.</summary>
    public int MaximumDepth { get; init; } = 64;

    /// <summary>How far parts should be painted on, px, above 0 and at most <see cref="MaximumDepth"/>; null for <see cref="UsualPercent"/> of the longer side of the canvas.</summary>
    public double? WantedDepth { get; init; }

    /// <summary>Whether hidden parts are measured and cover others.</summary>
    public bool IncludeHidden { get; init; }

    /// <summary>How far parts of a file should be painted on, px.</summary>
    /// <exception cref="LayeredFileException">A depth is out of range.</exception>
    internal double WantedDepthFor(LayerFile file)
    {
        if (MaximumDepth is < 1 or > DeepestDepth) throw Refuse(file, FormattableString.Invariant($"The greatest depth is {MaximumDepth} px."), FormattableString.Invariant($"Take 1 to {DeepestDepth} px."));
        var wanted = WantedDepth ?? Math.Min(MaximumDepth, DepthOf(file, UsualPercent));
        if (!(wanted > 0 && wanted <= MaximumDepth))
        {
            throw Refuse(file, FormattableString.Invariant($"The wanted depth is {wanted} px."), FormattableString.Invariant($"Take more than 0 and at most the greatest depth, {MaximumDepth} px."));
        }

        return wanted;
    }

    /// <summary>A depth in per cent of the longer side of a file's canvas, in px, to a tenth and at least 1 px unless it is 0.</summary>
    internal static double DepthOf(LayerFile file, double percent) => percent <= 0 ? 0 : Math.Max(1, Math.Round(Math.Max(file.Width, file.Height) * percent / 100, 1));

    private static LayeredFileException Refuse(LayerFile file, string problem, string remedy) =>
        new(LayeredFileErrorKind.EditRefused, file.Path, "cover", -1, problem, remedy);
}
