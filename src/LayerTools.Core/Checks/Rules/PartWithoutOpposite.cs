using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>A part on one side only.</summary>
internal sealed class PartWithoutOpposite : PartRule
{
    public override string Id => nameof(PartWithoutOpposite);

    public override string Title => "The part has no opposite";

    public override string Reason => "A part whose name says a side has one on the other side as well, unless the profile's vocabulary knows it as a part that a figure has once. Of a group without an opposite the group alone is told.";

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        var told = new HashSet<Layer>();
        foreach (var part in PartsOf(context).Where(part => !part.IsEmpty && IsMissing(context, part)))
        {
            var alone = FindGroup(context, part.Layer) ?? part.Layer;
            if (!told.Add(alone)) continue;
            var other = Opposites.SideOf(alone) == Side.Left ? "right" : "left";
            yield return Find(context, alone, alone.IsGroup ? $"There is no group on the {other} for this one." : $"There is no part on the {other} for this one.", Reflection.Advise(alone));
        }
    }

    private static bool IsMissing(CheckContext context, PartSurvey part) =>
        Opposites.SideOf(part.Layer) != Side.None && context.Opposites.FindAcross(part.Layer) is null && context.NameOf(part.Layer).Part is not { IsPaired: false };

    /// <summary>The outermost group around a layer that says the side and has no opposite itself.</summary>
    private static Layer? FindGroup(CheckContext context, Layer layer)
    {
        Layer? found = null;
        for (var group = layer.GetParent(); group is not null; group = group.GetParent())
        {
            if (group.Side != Side.None && context.Opposites.Find(group) is null) found = group;
        }

        return found;
    }
}
