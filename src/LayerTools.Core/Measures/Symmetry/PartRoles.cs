using LayerTools.Model;

namespace LayerTools.Measures.Symmetry;

/// <summary>Which layers of a file are parts of its figure.</summary>
internal sealed class PartRoles(LayerFile file)
{
    private readonly StatusOptions options = new();

    /// <summary>Whether a layer is painted by itself and neither it nor a group around it is a backdrop, a sketch or a guide.</summary>
    public bool IsPart(Layer layer)
    {
        if (layer.Kind is LayerKind.Group or LayerKind.Adjustment or LayerKind.Fill) return false;
        for (var named = layer; named is not null; named = named.GetParent())
        {
            if (IsSetApart(named)) return false;
        }

        return true;
    }

    /// <summary>Whether a layer or group is a backdrop, a sketch or a guide, whatever the groups around it are. What is opaque all over the canvas is a backdrop by any name.</summary>
    public bool IsSetApart(Layer layer) =>
        options.TellRole(layer) != LayerRole.Part
        || (!layer.IsGroup && layer.FindPlane(PlaneRole.Alpha) is null && layer.Planes.Count > 0 && !layer.HasMask && layer.Bounds.Intersect(Canvas) == Canvas);

    /// <summary>Whether a layer or group is switched on and belongs to the figure.</summary>
    public bool IsShown(Layer layer) => layer.Visible && !IsSetApart(layer);

    private Bounds Canvas => new(0, 0, file.Width, file.Height);
}
