using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>Makes reflections without their pixels: everything about them can be told, and refused, before anything is unpacked.</summary>
internal sealed class MirrorCopier
{
    private readonly LayerFile file;
    private readonly int doubledAxis;
    private readonly Refusal refusal;
    private readonly IdSource ids;

    public MirrorCopier(LayerFile file, int doubledAxis, Refusal refusal)
    {
        this.file = file;
        this.doubledAxis = doubledAxis;
        this.refusal = refusal;
        ids = new IdSource(file);
    }

    /// <summary>A reflection for a new place, with all layers in it and new ids.</summary>
    public MirrorPair Copy(Layer source) => new(source, CopyTree(source));

    /// <summary>A reflection that takes the place of a layer: with its id, its name and its clipping, so that the stack stays as it is.</summary>
    public MirrorPair Copy(Layer source, Layer replaced)
    {
        var copy = CopyLayer(source);
        copy.Id = replaced.Id;
        copy.Name = replaced.Name;
        copy.Clipped = replaced.Clipped;
        return new MirrorPair(source, copy);
    }

    private Layer CopyTree(Layer source)
    {
        var copy = CopyLayer(source);
        copy.Id = ids.Next();
        foreach (var child in source.GetChildren()) copy.Append(CopyTree(child));
        return copy;
    }

    private Layer CopyLayer(Layer source)
    {
        var detail = source.Detail.Copy();
        var isPlain = source.Kind is LayerKind.Text or LayerKind.Placed;
        if (isPlain) detail.DropLiveContent();
        detail.Reflect(doubledAxis, file.Width);
        var name = SideName.Swap(source.Name);
        if (NameRules.FindProblem(name) is { } problem && NameRules.FindProblem(source.Name) is null)
        {
            refusal.Add($"the reflection of '{source.LayerPath}' would get a name which {problem}", NameRules.NameRemedy);
        }

        return new Layer(isPlain ? LayerKind.Pixel : source.Kind, name, detail)
        {
            Bounds = source.IsGroup && source.Bounds.IsEmpty ? source.Bounds : Reflect(source, source.Bounds),
            Mask = Reflect(source, source.Mask),
            Visible = source.Visible,
            Clipped = source.Clipped,
            BlendMode = source.BlendMode,
            Locked = source.Locked,
            LockFlags = source.LockFlags,
            OpacityByte = source.OpacityByte,
            FillOpacity = source.FillOpacity,
        };
    }

    private LayerMask? Reflect(Layer source, LayerMask? mask)
    {
        if (mask is null) return null;
        return mask with
        {
            Bounds = Reflect(source, mask.Bounds),
            PaintedBounds = mask.PaintedBounds is { } painted ? Reflect(source, painted) : null,
        };
    }

    private Bounds Reflect(Layer source, Bounds bounds)
    {
        if (Math.Abs((long)doubledAxis - bounds.Right) <= CanvasLimits.Farthest) return bounds.Reflect(doubledAxis);
        refusal.Add($"the reflection of '{source.LayerPath}' would lie farther out than coordinates go", "Choose an axis near the canvas.");
        return bounds;
    }
}
