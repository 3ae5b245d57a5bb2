using System.Globalization;
using LayerTools.Model;

namespace LayerTools.Edits.Rig;

/// <summary>Says what baking changes in a file, and puts the result in place.</summary>
internal static class RigSteps
{
    /// <summary>The steps; none if the file is as a rig takes it already.</summary>
    public static IEnumerable<EditStep> List(LayerFile file, RigBaker baker, IReadOnlyList<RigEntry> entries, RigDifference difference)
    {
        var steps = entries.SelectMany(List).ToList();
        if (baker.IsConverted)
        {
            if (file.ColorMode != baker.Target.ColorMode) steps.Insert(0, new EditStep(null, nameof(LayerFile.ColorMode), file.ColorMode.ToString(), baker.Target.ColorMode.ToString()));
            if (file.BitDepth != baker.Target.BitDepth) steps.Insert(0, new EditStep(null, nameof(LayerFile.BitDepth), Text(file.BitDepth), Text(baker.Target.BitDepth)));
        }

        if (steps.Count == 0) return [];
        return steps.Append(new EditStep(null, "Picture", "0", FormattableString.Invariant($"differs by at most {difference.Largest}/255, on average {difference.Mean:0.####}/255")));
    }

    /// <summary>Makes the file what the baked one is; nothing here can fail.</summary>
    public static void Apply(LayerFile file, LayerFile baked, IEnumerable<RigEntry> entries)
    {
        var sources = entries.Where(entry => entry.Target is not null && entry.Outcome != RigOutcome.Merged).ToDictionary(entry => entry.Target!, entry => entry.Source);
        foreach (var layer in file.GetLayers().ToList()) layer.Detach();
        Fill(file.Root, baked.Root, sources);
        file.ColorMode = baked.ColorMode;
        file.BitDepth = baked.BitDepth;
        file.Detail = baked.Detail;
    }

    private static void Fill(Layer group, Layer baked, Dictionary<Layer, Layer> sources)
    {
        foreach (var child in baked.GetChildren())
        {
            var layer = sources[child];
            layer.Kind = child.Kind;
            layer.Name = child.Name;
            layer.BlendMode = child.BlendMode;
            layer.Visible = child.Visible;
            layer.Clipped = child.Clipped;
            layer.OpacityByte = child.OpacityByte;
            layer.FillOpacity = child.FillOpacity;
            layer.Mask = child.Mask;
            layer.Bounds = child.Bounds;
            layer.Planes = child.Planes;
            layer.Detail = child.Detail;
            group.Append(layer);
            Fill(layer, child, sources);
        }
    }

    private static IEnumerable<EditStep> List(RigEntry entry)
    {
        var source = entry.Source;
        switch (entry.Outcome)
        {
            case RigOutcome.Dropped:
                yield return new EditStep(source, "Layer", source.Name, null);
                yield break;
            case RigOutcome.Merged:
                yield return new EditStep(source, "Merged", source.Name, entry.Target!.Name);
                yield break;
            case RigOutcome.Baked:
                yield return new EditStep(source, "Part", string.Join("; ", entry.Baked), source.IsGroup ? "group" : $"pixels, {entry.Target!.Bounds}");
                break;
        }

        if (source.Name != entry.Target!.Name) yield return new EditStep(source, nameof(Layer.Name), source.Name, entry.Target.Name);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
