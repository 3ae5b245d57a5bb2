using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Works out what happened to each layer of two files whose layers were found again.</summary>
internal sealed class FileDifferences(ContentCache oldContents, ContentCache newContents, StoredContent stored, IReadOnlyList<LayerMatch> matches, CancellationToken cancellation)
{
    private readonly LayerFile old = oldContents.File;
    private readonly LayerFile @new = newContents.File;

    public DeliveryComparison Find()
    {
        var partners = matches.ToDictionary(match => match.Old, match => match.New);
        var regrouped = new HashSet<Layer>(matches.Where(match => !LiesInSameGroup(match, partners)).Select(match => match.New));
        var restacked = StackChanges.Find(matches, regrouped);
        var contents = CompareContents();
        var found = new HashSet<Layer>(matches.Select(match => match.New));
        var crowded = FindSharedPaths(@new);
        crowded.ExceptWith(FindSharedPaths(old));

        var differences = matches.Select(match => Describe(match, contents, regrouped, restacked, crowded))
            .Concat(old.GetLayers().Where(layer => !partners.ContainsKey(layer)).Select(DescribeRemoved))
            .Concat(@new.GetLayers().Where(layer => !found.Contains(layer)).Select(layer => DescribeAdded(layer, crowded)));
        return new DeliveryComparison(
            [.. differences.OrderBy(difference => difference.Breaks is not null ? 0 : difference.Change != LayerChange.Same ? 1 : 2).ThenBy(difference => difference.LayerNumber ?? difference.OldLayerNumber)],
            [.. FindWarnings()]);
    }

    private static HashSet<string> FindSharedPaths(LayerFile file) =>
        new(file.GetLayers().GroupBy(layer => layer.LayerPath, StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => group.Key), StringComparer.Ordinal);

    private static bool LiesInSameGroup(LayerMatch match, Dictionary<Layer, Layer> partners)
    {
        var (before, now) = (match.Old.GetParent(), match.New.GetParent());
        return before is null || now is null ? before is null && now is null : partners.TryGetValue(before, out var partner) && partner == now;
    }

    /// <summary>Only layers whose packed bytes differ are unpacked.</summary>
    private Dictionary<Layer, ContentDifference> CompareContents()
    {
        var contents = new Dictionary<Layer, ContentDifference>();
        var unlike = new List<LayerMatch>();
        foreach (var match in matches)
        {
            cancellation.ThrowIfCancellationRequested();
            if (!stored.AreSame(match.Old, match.New)) unlike.Add(match);
            else if (!match.Old.Bounds.IsEmpty && match.Old.Bounds != match.New.Bounds) contents.Add(match.New, Moved(match));
        }

        // The largest first, so that no processor is left with a large one when the others are done.
        unlike = [.. unlike.OrderByDescending(match => match.New.Bounds.Area)];
        var comparer = new ContentComparer(oldContents, newContents, cancellation);
        var compared = ParallelWork.Select(unlike, comparer.Compare, cancellation);
        for (var i = 0; i < unlike.Count; i++) contents.Add(unlike[i].New, compared[i]);
        return contents;
    }

    private static ContentDifference Moved(LayerMatch match) => new()
    {
        Change = LayerChange.Moved,
        Shift = (match.New.Bounds.Left - match.Old.Bounds.Left, match.New.Bounds.Top - match.Old.Bounds.Top),
    };

    private LayerDifference Describe(LayerMatch match, Dictionary<Layer, ContentDifference> contents, HashSet<Layer> regrouped, HashSet<Layer> restacked, HashSet<string> crowded)
    {
        var (before, now) = (match.Old, match.New);
        contents.TryGetValue(now, out var content);
        var change = content?.Change ?? LayerChange.Same;
        if (before.Name != now.Name) change |= LayerChange.Renamed;
        if (regrouped.Contains(now)) change |= LayerChange.Regrouped;
        if (restacked.Contains(now)) change |= LayerChange.Restacked;
        if (before.Visible != now.Visible) change |= LayerChange.Switched;
        if (before.Kind != now.Kind) change |= LayerChange.Converted;
        if (IsReblended(before, now)) change |= LayerChange.Reblended;
        return new LayerDifference
        {
            Change = change,
            LayerPath = now.LayerPath,
            OldLayerPath = before.LayerPath,
            LayerNumber = now.LayerNumber,
            OldLayerNumber = before.LayerNumber,
            Breaks = Breaks(before, now, change, crowded),
            MovedRight = change.HasFlag(LayerChange.Moved) ? content!.Shift.Right : null,
            MovedDown = change.HasFlag(LayerChange.Moved) ? content!.Shift.Down : null,
            WidthPercent = content?.Percent is { } percent ? Math.Round(percent.Width, 1) : null,
            HeightPercent = content?.Percent is { } sizes ? Math.Round(sizes.Height, 1) : null,
            RepaintedPercent = content?.Pixels is { } pixels ? Math.Round(100 * pixels.Share, 2) : null,
            LargestDifference = content?.Pixels?.Largest,
            ChangedBox = content?.Pixels is { Box.IsEmpty: false } changed ? changed.Box : null,
            MatchedBy = match.Evidence,
            FilePath = @new.Path,
            ReferencePath = old.Path,
        };
    }

    private LayerDifference DescribeRemoved(Layer layer) => new()
    {
        Change = LayerChange.Removed,
        LayerPath = layer.LayerPath,
        OldLayerPath = layer.LayerPath,
        OldLayerNumber = layer.LayerNumber,
        Breaks = "It is gone.",
        MatchedBy = MatchEvidence.None,
        FilePath = @new.Path,
        ReferencePath = old.Path,
    };

    private LayerDifference DescribeAdded(Layer layer, HashSet<string> crowded) => new()
    {
        Change = LayerChange.Added,
        LayerPath = layer.LayerPath,
        LayerNumber = layer.LayerNumber,
        Breaks = crowded.Contains(layer.LayerPath) ? SharedPath : null,
        MatchedBy = MatchEvidence.None,
        FilePath = @new.Path,
        ReferencePath = old.Path,
    };

    private const string SharedPath = "Another layer has the same path.";

    private static string? Breaks(Layer before, Layer now, LayerChange change, HashSet<string> crowded)
    {
        var reasons = new List<string>();
        if (change.HasFlag(LayerChange.Renamed)) reasons.Add($"It was called '{before.Name}'.");
        if (change.HasFlag(LayerChange.Regrouped)) reasons.Add(before.GetParent() is { } group ? $"It lay in '{group.LayerPath}'." : "It lay in no group.");
        if (crowded.Contains(now.LayerPath)) reasons.Add(SharedPath);
        return reasons.Count == 0 ? null : string.Join(" ", reasons);
    }

    private bool IsReblended(Layer before, Layer now)
    {
        if (before.BlendMode != now.BlendMode || before.OpacityByte != now.OpacityByte || before.FillOpacity != now.FillOpacity || before.Clipped != now.Clipped) return true;
        var (one, two) = (before.Detail.Blending, now.Detail.Blending);
        if (one.Knockout != two.Knockout || !one.ExcludedChannels.SequenceEqual(two.ExcludedChannels) || !one.Ranges.SequenceEqual(two.Ranges)) return true;
        return before.Detail.EffectContent.Count + now.Detail.EffectContent.Count > 0 && oldContents.Reader.ReadEffects(before) != newContents.Reader.ReadEffects(now);
    }

    private IEnumerable<string> FindWarnings()
    {
        if ((old.Width, old.Height) != (@new.Width, @new.Height))
        {
            yield return FormattableString.Invariant($"The canvas is {@new.Width} x {@new.Height} px and was {old.Width} x {old.Height} px.");
        }

        if (old.ColorMode != @new.ColorMode || old.BitDepth != @new.BitDepth)
        {
            yield return FormattableString.Invariant($"The file is {@new.ColorMode} with {@new.BitDepth} bits and was {old.ColorMode} with {old.BitDepth} bits; pixels are compared as a screen shows them.");
        }

        if (old.Ppi != @new.Ppi) yield return FormattableString.Invariant($"The file has {Text(@new.Ppi)} and had {Text(old.Ppi)}.");

        static string Text(double? ppi) => ppi is { } known ? FormattableString.Invariant($"{known:0.##} ppi") : "no resolution";
    }
}
