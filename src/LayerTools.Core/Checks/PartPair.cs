using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Checks;

/// <summary>Two parts that are each other's opposite, both with something to be seen.</summary>
/// <param name="Left">The one that its name, or a group around it, puts on the left.</param>
/// <param name="Right">The one on the right.</param>
internal sealed record PartPair(PartSurvey Left, PartSurvey Right)
{
    /// <summary>Share of a side's length by which boxes may differ and still be those of one drawing.</summary>
    private const double SameShape = 0.02;

    /// <summary>Columns or rows by which soft edges make boxes of one drawing differ.</summary>
    private const int SoftEdge = 2;

    /// <summary>The front-most of the two.</summary>
    public PartSurvey Front => Left.Layer.LayerNumber < Right.Layer.LayerNumber ? Left : Right;

    /// <summary>Whether the boxes are about the same size, as those of a part and its reflection are. Where they are not, the figure stands in a pose or is not meant to be symmetrical.</summary>
    public bool HasSameBox => AreSame(Left.Seen.Width, Right.Seen.Width) && AreSame(Left.Seen.Height, Right.Seen.Height);

    /// <summary>Twice the x of the line in the middle between both, canvas px.</summary>
    public double DoubledMiddle => (Left.Seen.Left + (double)Left.Seen.Right + Right.Seen.Left + Right.Seen.Right) / 2;

    /// <summary>The pairs among the parts of a file, in the stack order of their left parts.</summary>
    public static IReadOnlyList<PartPair> FindAll(FigureSurvey survey, Opposites opposites) =>
    [
        .. from part in survey.Parts
           where part is { IsPart: true, IsEmpty: false } && Opposites.SideOf(part.Layer) == Side.Left
           let opposite = opposites.FindAcross(part.Layer)
           where opposite is not null
           let other = survey.Find(opposite)
           where other is { IsPart: true, IsEmpty: false }
           select new PartPair(part, other),
    ];

    private static bool AreSame(int one, int other) => Math.Abs(one - other) <= Math.Max(SoftEdge, SameShape * Math.Max(one, other));
}
