using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>What cuts a part from outside.</summary>
/// <param name="MaskedGroups">Groups around it whose masks are applied to it, outermost first.</param>
/// <param name="Shapes">Parts it is cut to.</param>
internal sealed record RigContext(IReadOnlyList<Layer> MaskedGroups, IReadOnlyList<RigPicture> Shapes)
{
    public static readonly RigContext None = new([], []);

    public bool IsEmpty => MaskedGroups.Count == 0 && Shapes.Count == 0;

    public RigContext Within(Layer group) => this with { MaskedGroups = [.. MaskedGroups, group] };
}
