using LayerTools.Model;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Edits.Rig;

/// <summary>Bakes a file into a new model and leaves the file itself alone. One part at a time is drawn; its packed channels go to the new model's spool.</summary>
internal sealed class RigBaker : IDisposable
{
    private const int Margin = 1;
    private readonly LayerFile file;
    private readonly RigEdit edit;
    private readonly RigSelection selection;
    private readonly RigDrawer drawer;
    private readonly RigKeeper keeper;
    private readonly Dictionary<Layer, RigEntry> entries = [];

    public RigBaker(LayerFile file, RigEdit edit, RigSelection selection)
    {
        this.file = file;
        this.edit = edit;
        this.selection = selection;
        drawer = new RigDrawer(file, edit.Cancellation);
        IsConverted = file.ColorMode != ColorMode.Rgb || file.BitDepth != 8;
        Target = new LayerFile(file.Path, file.Format, file.Width, file.Height, ColorMode.Rgb, 8, file.Detail) { Ppi = file.Ppi, Guides = file.Guides };
        if (IsConverted) Target.Detail = file.Detail.ToEightBitRgb(file, keepsPicture: false, Target.Spool);
        keeper = new RigKeeper(file, Target, drawer.Reader, IsConverted);
        foreach (var layer in file.GetLayers()) entries[layer] = new RigEntry(layer);
    }

    /// <summary>The baked file.</summary>
    public LayerFile Target { get; }

    /// <summary>Whether the file's colours or depth change.</summary>
    public bool IsConverted { get; }

    /// <summary>What became of each layer, front to back.</summary>
    public IEnumerable<RigEntry> Entries => entries.Values.OrderBy(entry => entry.Source.LayerNumber);

    /// <exception cref="Errors.LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    public void Bake()
    {
        foreach (var gone in selection.All) entries[gone.Key].Drop(gone.Value);
        BakeChildren(file.Root, Target.Root, RigContext.None);
        Target.Renumber();
        RigModes.Settle(Entries);
        RigNames.MakeUnique(Target);
        if (IsConverted && CompositorSupport.FindNotDrawn(Target).Count > 0) Target.Detail = file.Detail.ToEightBitRgb(file, keepsPicture: true, Target.Spool);
    }

    public void Dispose() => drawer.Dispose();

    private void BakeChildren(Layer group, Layer target, RigContext context)
    {
        foreach (var run in ClippingRun.Split(group.GetChildren()))
        {
            edit.Cancellation.ThrowIfCancellationRequested();
            foreach (var baked in BakeRun(run, context)) target.Insert(0, baked);
        }
    }

    /// <summary>What a run becomes, back to front.</summary>
    private List<Layer> BakeRun(ClippingRun run, RigContext context)
    {
        var clipped = run.Clipped.Where(layer => !selection.IsLeftOut(layer)).ToList();
        if (run.Base is null) return [.. Enumerable.Reverse(clipped).SelectMany(layer => BakeOne(layer, context, "clipping to nothing"))];
        if (selection.IsLeftOut(run.Base)) return [];
        if (clipped.Count == 0) return BakeOne(run.Base, context, note: null);
        return run.Base.IsGroup ? BakeOntoGroup(run.Base, clipped, context) : BakeOntoPart(run.Base, clipped, context);
    }

    private List<Layer> BakeOne(Layer layer, RigContext context, string? note)
    {
        if (note is not null) entries[layer].Baked.Add(note);
        return layer.IsGroup ? BakeGroup(layer, context) : BakePart(layer, [], context);
    }

    private List<Layer> BakeGroup(Layer group, RigContext context)
    {
        var entry = entries[group];
        var hasMask = RigClones.HasActiveMask(group);
        var stubborn = hasMask ? FindStubborn(group) : null;
        var target = RigClones.Copy(group);
        target.Clipped = false;
        if (IsConverted) keeper.Convert(group, target);
        if (stubborn is not null)
        {
            entry.NotBaked.Add($"mask, since '{stubborn.LayerPath}' in it cannot be baked");
        }
        else if (group.HasMask)
        {
            target.Mask = null;
            target.Detail = target.Detail.WithoutMasks();
            target.Planes.RemoveAll(plane => plane.Role is PlaneRole.UserMask or PlaneRole.PaintedMask);
            entry.Baked.Add(hasMask ? "mask, into each part in it" : "mask that was switched off");
            entry.Outcome = RigOutcome.Baked;
        }

        entry.NotBaked.AddRange(DescribeGroup(group));
        BakeChildren(group, target, hasMask && stubborn is null ? context.Within(group) : context);
        entry.Target = target;
        if (target.GetChildren().Count > 0 || group.GetChildren().Count == 0) return [target];
        entry.Drop("nothing is left in it");
        return [];
    }

    private static IEnumerable<string> DescribeGroup(Layer group)
    {
        if (group.BlendMode is not (BlendMode.PassThrough or BlendMode.Normal)) yield return $"blend mode {group.BlendMode} of the group";
        if (group.Detail.Features.HasFlag(LayerFeatures.Effects)) yield return "effects of the group";
        if (group.Detail.Artboard is not null) yield return "the group's sheet";
        if (RigKeeper.HasBackdropRules(group)) yield return "blending rules of the group";
    }

    /// <summary>The first layer in a group that will be kept as it is.</summary>
    private Layer? FindStubborn(Layer group) => group.GetLayers().FirstOrDefault(layer => !layer.IsGroup && !selection.IsLeftOut(layer) && IsStubborn(layer));

    private bool IsStubborn(Layer layer)
    {
        if (layer.Kind == LayerKind.Adjustment) return ClippingRun.Of(layer) is var run && (ReferenceEquals(run.Base, layer) || run.Base is not { IsGroup: false });
        return FindReason([layer]) is not null;
    }

    private List<Layer> BakeOntoGroup(Layer group, List<Layer> clipped, RigContext context)
    {
        var isPlain = group is { BlendMode: BlendMode.Normal or BlendMode.PassThrough, OpacityByte: byte.MaxValue, FillOpacity: byte.MaxValue } && !group.Detail.Features.HasFlag(LayerFeatures.Effects);
        var reason = !isPlain ? "the group it is clipped to is not plain" : clipped.Any(layer => IsAdjusting(layer)) ? "an adjustment of the group" : clipped.Select(layer => FindReason([layer])).FirstOrDefault(found => found is not null);
        var baked = BakeGroup(group, context);
        if (baked.Count == 0)
        {
            foreach (var layer in clipped) entries[layer].Drop("clipped to nothing that is left");
            return baked;
        }

        if (reason is not null) return [.. baked, .. clipped.AsEnumerable().Reverse().Select(layer => Keep(layer, $"clipping to a group: {reason}"))];
        using var shape = drawer.Draw([RigClones.Shape(group, selection.IsLeftOut)], context);
        var cut = BakeCut(clipped, shape, group);
        // What is clipped to a group sees it put together apart from what lies below.
        if (baked[0].BlendMode == BlendMode.PassThrough && cut.Any(layer => layer.Visible)) baked[0].BlendMode = BlendMode.Normal;
        return [.. baked, .. cut];
    }

    private List<Layer> BakeOntoPart(Layer below, List<Layer> clipped, RigContext context)
    {
        var visible = clipped.Where(layer => layer.Visible).ToList();
        var isApart = below.Detail.Features.HasFlag(LayerFeatures.ClippedApart);
        var merged = ChooseMerged(below, visible, isApart);
        var cut = clipped.Where(layer => !merged.Contains(layer) && !IsAdjusting(layer)).ToList();
        var reason = isApart && visible.Any(IsAdjusting) ? "an adjustment that also changes what lies below" : FindReason([.. merged, below]) ?? cut.Select(layer => FindReason([layer])).FirstOrDefault(found => found is not null);
        if (reason is not null) return [Keep(below, reason), .. clipped.AsEnumerable().Reverse().Select(layer => Keep(layer, $"clipped to '{below.Name}', which is kept as it is"))];

        foreach (var layer in clipped.Where(layer => !layer.Visible && IsAdjusting(layer))) entries[layer].Drop("a hidden adjustment inside a part");
        var baked = BakePart(below, merged, context);
        if (cut.Count == 0) return baked;
        using var shape = drawer.Draw([RigClones.Shape(below, selection.IsLeftOut)], context);
        return [.. baked, .. BakeCut(cut, shape, below)];
    }

    /// <summary>Those of the visible clipped layers, front to back, that are painted into their base: all, or where they are to be cut the adjustments and what those work on.</summary>
    private List<Layer> ChooseMerged(Layer below, List<Layer> visible, bool isApart)
    {
        if (isApart) return [];
        if (edit.Clipping == RigClipping.Merge) return visible;
        if (below is not { BlendMode: BlendMode.Normal, OpacityByte: byte.MaxValue, FillOpacity: byte.MaxValue })
        {
            if (visible.Count > 0) entries[below].NotBaked.Add("layers clipped to it are merged, since its opacity or blend mode holds for all of them");
            return visible;
        }

        var front = visible.FindIndex(IsAdjusting);
        return front < 0 ? [] : visible.GetRange(front, visible.Count - front);
    }

    private List<Layer> BakeCut(IEnumerable<Layer> layers, RigPicture shape, Layer below)
    {
        var context = new RigContext([], [shape]);
        return [.. layers.Reverse().SelectMany(layer => BakeOne(layer, context, $"cut to '{below.Name}'"))];
    }

    private List<Layer> BakePart(Layer layer, List<Layer> merged, RigContext context)
    {
        var entry = entries[layer];
        if (merged.Count == 0)
        {
            if (layer.Kind == LayerKind.Adjustment) return [Keep(layer, "an adjustment of all that lies below it")];
            if (FindReason([layer]) is { } reason) return [Keep(layer, reason)];
            if (!IsConverted && context.IsEmpty && !layer.Clipped && keeper.IsPlain(layer, Margin)) return [entry.Target = RigKeeper.CopyPlain(entry)];
        }

        var target = RigKeeper.CreatePart(layer, entry, merged, context);
        using var picture = drawer.Draw([.. merged.Select(part => CopyClipped(part)), RigClones.Alone(layer, selection.IsLeftOut)], context);
        if (picture.Painted.IsEmpty)
        {
            entry.Drop("nothing is painted on it, or its masks hide all");
            foreach (var part in merged.SelectMany(part => part.GetLayers().Prepend(part))) entries[part].Drop($"clipped to '{layer.LayerPath}', which is empty");
            return [];
        }

        target.Bounds = new Bounds(picture.Painted.Left - Margin, picture.Painted.Top - Margin, picture.Painted.Right + Margin, picture.Painted.Bottom + Margin);
        target.Planes = picture.Pack(target.Bounds, file.Format, Target.Spool);
        entry.Target = target;
        entry.Outcome = RigOutcome.Baked;
        if (entry.Baked.Count == 0) entry.Baked.Add(layer.FindPlane(PlaneRole.Alpha) is null ? "transparency added" : target.Bounds == layer.Bounds ? "colours" : "rectangle");
        foreach (var part in merged.SelectMany(part => part.GetLayers().Prepend(part)).Where(part => !selection.IsLeftOut(part)))
        {
            entries[part].Target = target;
            entries[part].Outcome = RigOutcome.Merged;
            entries[part].Baked.Add($"into '{layer.LayerPath}'");
        }

        return [target];
    }

    private Layer CopyClipped(Layer layer)
    {
        var copy = RigClones.CopyTree(layer, selection.IsLeftOut);
        copy.Clipped = true;
        return copy;
    }

    private Layer Keep(Layer layer, string reason)
    {
        var entry = entries[layer];
        var target = keeper.CopyAsIs(layer);
        foreach (var child in layer.GetChildren().Where(child => !selection.IsLeftOut(child))) target.Append(Keep(child, $"in '{layer.Name}', which is kept as it is"));
        entry.Target = target;
        entry.Outcome = RigOutcome.Kept;
        entry.NotBaked.Add(reason);
        return target;
    }

    private static bool IsAdjusting(Layer layer) => layer.Kind == LayerKind.Adjustment || (layer.IsGroup && layer.GetLayers().Any(child => child.Kind == LayerKind.Adjustment));

    /// <summary>Why layers cannot be baked together, the last being the base of the others; null if they can.</summary>
    private string? FindReason(IReadOnlyList<Layer> layers)
    {
        foreach (var layer in layers.SelectMany(layer => layer.GetLayers().Prepend(layer)).Where(layer => !selection.IsLeftOut(layer)))
        {
            if (layer.Kind is LayerKind.Text or LayerKind.Placed && !layer.HasStoredPixels) return $"no pixels are stored for '{layer.Name}'";
            if (keeper.HasBadNumbers(layer)) return $"'{layer.Name}' has samples that are no numbers";
        }

        var copies = layers.Select((layer, i) => i == layers.Count - 1 ? RigClones.Alone(layer, selection.IsLeftOut) : CopyClipped(layer)).ToList();
        var reasons = drawer.FindReasons(copies);
        return reasons.Count == 0 ? null : string.Join(", ", reasons);
    }
}
