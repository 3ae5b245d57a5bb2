using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>What a user should know about reflections, as sentences.</summary>
internal static class MirrorNotes
{
    /// <summary>About the reflections themselves.</summary>
    public static IEnumerable<string> Describe(IReadOnlyList<MirrorPair> pairs)
    {
        var sources = pairs.Select(pair => pair.Source).ToList();
        var live = sources.Where(layer => layer.Kind is LayerKind.Text or LayerKind.Placed).ToList();
        if (live.Count > 0) yield return $"The data of live text and placed content cannot be reflected; these reflections are plain pixels: {QuotedPaths.Join(live)}.";
        var blank = live.Where(layer => layer.Bounds.IsEmpty || layer.Planes.All(plane => plane.Data.Length == 0)).ToList();
        if (blank.Count > 0) yield return $"The file stores no pixels for these, so their reflections are empty: {QuotedPaths.Join(blank)}.";
        var directed = sources.Where(layer => (layer.Detail.Features & LayerFeatures.DirectedEffects) != 0).ToList();
        if (directed.Count > 0) yield return $"Effects with a direction are kept as they are, not reflected; look at them: {QuotedPaths.Join(directed)}.";
        var fills = sources.Where(layer => layer.Kind is LayerKind.Fill or LayerKind.Shape).ToList();
        if (fills.Count > 0) yield return $"Fills and shapes stay live; a gradient or pattern in them keeps its direction: {QuotedPaths.Join(fills)}.";
    }

    /// <summary>About parts that another group holds under the name that a reflection gets.</summary>
    public static IEnumerable<string> DescribeElsewhere(LayerFile file, IEnumerable<MirrorItem> items)
    {
        var made = items.Where(item => item.Place is not MirrorPlace.InsteadOf).SelectMany(item => item.Block).Where(pair => pair.Source.Name != pair.Copy.Name);
        var names = new HashSet<string>(made.Select(pair => pair.Copy.Name), StringComparer.OrdinalIgnoreCase);
        var elsewhere = file.GetLayers().Where(layer => names.Contains(layer.Name)).ToList();
        if (elsewhere.Count > 0) yield return $"Reflections have the names of layers that other groups hold: {QuotedPaths.Join(elsewhere)}.";
    }

    /// <summary>About chosen parts that nothing is done with.</summary>
    public static IEnumerable<string> DescribeUntouched(MirrorPlanner planner, string from)
    {
        if (planner.Skipped.Count > 0) yield return $"Left alone, since their opposites are there already: {QuotedPaths.Join(planner.Skipped)}. Use -Existing Replace to draw them anew.";
        if (planner.Unsided.Count > 0) yield return $"Left alone, since their names do not say {from}: {QuotedPaths.Join(planner.Unsided)}.";
    }

    /// <summary>About clipped layers that could not go along.</summary>
    public static IEnumerable<string> DescribeLeftBehind(MirrorPlanner planner)
    {
        if (planner.LeftBehind.Count > 0) yield return $"Not taken along with their base, since their opposites are there already: {QuotedPaths.Join(planner.LeftBehind)}.";
    }
}
