using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Sheets.Parts;

/// <summary>Tells from marks and names how far the parts of a file are, as the status cmdlets do but without unpacking a pixel.</summary>
internal sealed class ProgressReader(LayerFile file)
{
    private readonly StatusOptions options = new();
    private readonly bool hasMarks = file.GetLayers().Any(layer => layer.Mark != Mark.None);

    public LayerRole GetRole(Layer layer) => options.FindRole(layer);

    public PartProgress Read(Layer layer)
    {
        if (GetRole(layer) != LayerRole.Part || layer.Bounds.IsEmpty) return PartProgress.NotCounted;
        if (!hasMarks) return PartProgress.Unknown;
        return options.DoneMarks.Contains(FindMark(layer)) ? PartProgress.Done : PartProgress.Open;
    }

    /// <summary>How far several are together: done if each that counts is.</summary>
    public PartProgress Read(IEnumerable<Layer> layers)
    {
        var counted = layers.Select(Read).Where(state => state != PartProgress.NotCounted).Distinct().ToList();
        return counted.Count == 1 ? counted[0] : counted.Count == 0 ? PartProgress.NotCounted : PartProgress.Open;
    }

    /// <summary>The layer's mark, or that of the nearest group around it that has one.</summary>
    private static Mark FindMark(Layer layer)
    {
        var marked = layer;
        while (marked.Mark == Mark.None && marked.GetParent() is { } group) marked = group;
        return marked.Mark;
    }
}
