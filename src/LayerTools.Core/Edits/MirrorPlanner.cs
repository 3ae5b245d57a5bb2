using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Edits;

/// <summary>Walks the tree and decides which layers are reflected, and where the reflections go.</summary>
internal sealed class MirrorPlanner
{
    private readonly HashSet<Layer> chosen;
    private readonly Side from;
    private readonly MirrorExisting existing;
    private readonly MirrorOpposites opposites;
    private readonly MirrorCopier copier;
    private readonly Refusal refusal;
    private readonly List<MirrorItem> items = [];
    private readonly HashSet<Layer> replaced = [];

    public MirrorPlanner(LayerFile file, HashSet<Layer> chosen, Side from, MirrorExisting existing, MirrorCopier copier, Refusal refusal)
    {
        this.chosen = chosen;
        this.from = from;
        this.existing = existing;
        this.copier = copier;
        this.refusal = refusal;
        opposites = new MirrorOpposites(file, from);
        Walk(file.Root, null, isChosen: false);
    }

    /// <summary>What is reflected, front to back.</summary>
    public IReadOnlyList<MirrorItem> Items => items;

    /// <summary>The layers on the other side that are there already.</summary>
    public IReadOnlyDictionary<Layer, Layer> Opposites => opposites.Found;

    /// <summary>Chosen parts that are left alone since their opposites exist.</summary>
    public List<Layer> Skipped { get; } = [];

    /// <summary>Chosen parts that say no side, or the other one.</summary>
    public List<Layer> Unsided { get; } = [];

    /// <summary>Clipped layers that do not go along with their base since their opposites exist.</summary>
    public List<Layer> LeftBehind { get; } = [];

    private void Walk(Layer group, Layer? opposite, bool isChosen)
    {
        opposites.Match(group, opposite);
        for (var i = 0; i < group.GetChildren().Count;)
        {
            var run = ClippingRun.Of(group.GetChildren()[i]);
            if (run.Base is null || !Visit(run.Base, run, opposite, isChosen))
            {
                foreach (var layer in run.Clipped) Visit(layer, run, opposite, isChosen);
            }

            i += run.Layers.Count;
        }
    }

    /// <summary>Decides about a layer; true if the layers clipped to it are settled with it.</summary>
    private bool Visit(Layer layer, ClippingRun run, Layer? oppositeGroup, bool isChosen)
    {
        isChosen |= chosen.Contains(layer) || (layer.Clipped && IsReplaced(run.Base));
        var belongs = layer.Side == from || (layer.Side == Side.None && (oppositeGroup is not null || (layer.Clipped && IsReplaced(run.Base))));
        var opposite = opposites[layer];
        if (!isChosen || !belongs || (opposite is not null && layer.IsGroup && opposite.IsGroup))
        {
            if (layer.IsGroup) Walk(layer, opposite is { IsGroup: true } ? opposite : null, isChosen);
            else if (!belongs && chosen.Contains(layer)) Unsided.Add(layer);
            return false;
        }

        if (opposite is not null)
        {
            Meet(layer, opposite, Skipped);
            return false;
        }

        if (layer.Clipped)
        {
            MirrorPlace place = run.Base is { } @base && opposites[@base] is not null ? new MirrorPlace.InRun(@base, layer) : new MirrorPlace.BehindClipped(layer);
            items.Add(new MirrorItem([copier.Copy(layer)], place));
            return false;
        }

        items.Add(new MirrorItem(
            [.. run.Clipped.Where(GoesAlong).Select(copier.Copy), copier.Copy(layer)],
            oppositeGroup is null ? new MirrorPlace.BehindRun(layer) : new MirrorPlace.InGroup(oppositeGroup, layer)));
        return true;
    }

    private bool GoesAlong(Layer clipped)
    {
        if (opposites[clipped] is not { } opposite) return true;
        Meet(clipped, opposite, LeftBehind);
        return false;
    }

    private bool IsReplaced(Layer? layer) => layer is not null && opposites[layer] is { } opposite && replaced.Contains(opposite);

    private void Meet(Layer layer, Layer opposite, List<Layer> untouched)
    {
        switch (existing)
        {
            case MirrorExisting.Skip:
                untouched.Add(layer);
                break;
            case MirrorExisting.Error:
                refusal.Add($"'{layer.LayerPath}' has its opposite '{opposite.LayerPath}' already", "Use -Existing Skip or -Existing Replace, or choose other layers.");
                break;
            case MirrorExisting.Replace when layer.IsGroup != opposite.IsGroup:
                refusal.Add($"of '{layer.LayerPath}' and '{opposite.LayerPath}' only one is a group", "Make both groups, or both layers.");
                break;
            case MirrorExisting.Replace when !replaced.Add(opposite):
                refusal.Add($"'{opposite.LayerPath}' is the opposite of several layers, one of them '{layer.LayerPath}'", "Give each part a name of its own.");
                break;
            default:
                items.Add(new MirrorItem([copier.Copy(layer, opposite)], new MirrorPlace.InsteadOf(opposite)));
                break;
        }
    }
}
