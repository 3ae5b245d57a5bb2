using LayerTools.Deliveries;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;

namespace LayerTools.Core.Tests.Deliveries;

/// <summary>A figure, a copy of it and random edits of the copy, with what each edit is. Invented data; one seed gives one script.</summary>
internal sealed class EditScript
{
    private const int Side = 64;

    private readonly Random random;
    private readonly HashSet<Layer> arrived = [];
    private readonly bool severalEdits;
    private int names;

    /// <param name="seed">Chooses the figure and the edits.</param>
    /// <param name="severalEdits">Whether one layer may get several edits.</param>
    public EditScript(int seed, bool severalEdits)
    {
        random = new Random(seed + 1_000_000);
        this.severalEdits = severalEdits;
        (Old, New) = (CreateFigure(seed), CreateFigure(seed));
        foreach (var layer in New.GetLayers()) Expected[layer.Id!.Value] = LayerChange.Same;
        Edit();
        New.Renumber();
    }

    public LayerFile Old { get; }

    public LayerFile New { get; }

    /// <summary>What happened to each layer, by id; layers that were added have ids of their own.</summary>
    public Dictionary<int, LayerChange> Expected { get; } = [];

    /// <summary>How far each layer moved.</summary>
    public Dictionary<int, (int Right, int Down)> Shifts { get; } = [];

    /// <summary>Box, number of pixels and largest difference of each repaint, as the layer lies in the new file.</summary>
    public Dictionary<int, (Bounds Box, int Count, int Largest)> Repaints { get; } = [];

    /// <summary>Drops the ids, as files by some programs have none.</summary>
    public Dictionary<Layer, int> DropIds()
    {
        var ids = Old.GetLayers().Concat(New.GetLayers()).ToDictionary(layer => layer, layer => layer.Id!.Value);
        foreach (var layer in ids.Keys) layer.Id = null;
        return ids;
    }

    private static LayerFile CreateFigure(int seed)
    {
        var random = new Random(seed);
        var count = 0;
        return ModelBuilder.File("figure.psd", Side, Side, Fill(0));

        Layer[] Fill(int depth) => [.. Enumerable.Range(0, random.Next(3, 7)).Select(_ => depth < 2 && random.Next(4) == 0 ? ModelBuilder.Group($"Group {++count}", Fill(depth + 1)) : Paint($"Part {++count}", random))];
    }

    private static Layer Paint(string name, Random random)
    {
        var painting = Painting.Of(name);
        for (var shape = 0; shape < 5; shape++)
        {
            var (left, top, width, height) = (random.Next(5, 30), random.Next(5, 30), random.Next(4, 24), random.Next(4, 24));
            var alpha = random.Next(2) == 0 ? byte.MaxValue : (byte)random.Next(100, 256);
            var rgb = random.Next(0x1000000);
            painting = random.Next(2) == 0 ? painting.Ellipse(left, top, width, height, alpha, rgb) : painting.Rectangle(left, top, width, height, alpha, rgb);
        }

        return painting.ToLayer();
    }

    private void Edit()
    {
        foreach (var layer in New.GetLayers().ToList()) EditInPlace(layer);
        foreach (var layer in New.GetLayers().Where(layer => IsFree(layer) && random.Next(12) == 0).ToList()) Remove(layer);
        for (var i = random.Next(3); i > 0; i--) Add();
        foreach (var layer in New.GetLayers().Where(layer => IsFree(layer) && random.Next(12) == 0).ToList()) Regroup(layer);
        foreach (var group in New.GetLayers().Where(layer => layer.IsGroup).Prepend(New.Root).Where(_ => random.Next(3) == 0).ToList()) Restack(group);
    }

    private bool IsFree(Layer layer) => layer.File is not null && layer.Id is { } id && Expected.TryGetValue(id, out var change) && (severalEdits ? !change.HasFlag(LayerChange.Added) : change == LayerChange.Same);

    private void EditInPlace(Layer layer)
    {
        // A group that has another name and other layers has nothing left to be known by without an id.
        Action<Layer>[] edits = layer.IsGroup ? severalEdits ? [Rename, Reblend, Switch] : [Reblend, Switch] : [Rename, Reblend, Switch, Move, Repaint, Mask];
        foreach (var edit in edits.OrderBy(_ => random.Next()))
        {
            if (random.Next(edits.Length * 2) != 0) continue;
            edit(layer);
            if (!severalEdits) return;
        }
    }

    private void Note(Layer layer, LayerChange change) => Expected[layer.Id!.Value] |= change;

    private void Rename(Layer layer)
    {
        layer.Name = $"New name {++names}";
        Note(layer, LayerChange.Renamed);
    }

    private void Reblend(Layer layer)
    {
        if (random.Next(2) == 0) layer.OpacityByte = (byte)random.Next(255);
        else layer.BlendMode = layer.BlendMode == BlendMode.Multiply ? BlendMode.Screen : BlendMode.Multiply;
        Note(layer, LayerChange.Reblended);
    }

    private void Switch(Layer layer)
    {
        layer.Visible = !layer.Visible;
        Note(layer, LayerChange.Switched);
    }

    private void Move(Layer layer)
    {
        var shift = (random.Next(1, 12), random.Next(-12, 12));
        layer.Bounds = layer.Bounds.Shift(shift.Item1, shift.Item2);
        if (layer.Mask is { } mask) mask.Bounds = mask.Bounds.Shift(shift.Item1, shift.Item2);
        if (Repaints.TryGetValue(layer.Id!.Value, out var repaint)) Repaints[layer.Id.Value] = repaint with { Box = repaint.Box.Shift(shift.Item1, shift.Item2) };
        Shifts[layer.Id.Value] = shift;
        Note(layer, LayerChange.Moved);
    }

    private void Mask(Layer layer)
    {
        var bounds = layer.Bounds;
        layer.Mask = new LayerMask { Bounds = bounds };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, [.. Enumerable.Range(0, bounds.Width * bounds.Height).Select(i => (byte)(i % 251))]));
        Note(layer, LayerChange.Masked);
    }

    /// <summary>Changes the blue of some opaque pixels, so that what is painted stays the same rectangle.</summary>
    private void Repaint(Layer layer)
    {
        using var reader = new PixelReader(layer.File!);
        var (alpha, blue) = (reader.ReadPlane(layer, PlaneRole.Alpha)!, reader.ReadPlane(layer, PlaneRole.Color2)!);
        var (box, count, largest) = (Bounds.Empty, 0, 0);
        var start = random.Next(alpha.Length);
        for (var i = start; i < alpha.Length && count < 40; i++)
        {
            if (alpha[i] < 255) continue;
            var changed = (byte)(blue[i] + random.Next(1, 255));
            largest = Math.Max(largest, Math.Abs(changed - blue[i]));
            blue[i] = changed;
            box = box.Union(Bounds.FromSize(layer.Bounds.Left + (i % layer.Bounds.Width), layer.Bounds.Top + (i / layer.Bounds.Width), 1, 1));
            count++;
        }

        if (count == 0) return;
        layer.Planes[layer.Planes.FindIndex(plane => plane.Role == PlaneRole.Color2)] = ModelBuilder.Raw(PlaneRole.Color2, blue);
        Repaints[layer.Id!.Value] = (box, count, largest);
        Note(layer, LayerChange.Repainted);
    }

    private void Remove(Layer layer)
    {
        foreach (var gone in layer.GetLayers().Prepend(layer)) Expected[gone.Id!.Value] = LayerChange.Removed;
        layer.Detach();
    }

    private void Add()
    {
        var layer = Paint($"New name {++names}", random);
        layer.Id = 1000 + names;
        var group = PickGroup(_ => true);
        group.Insert(random.Next(group.GetChildren().Count + 1), layer);
        arrived.Add(layer);
        Expected[layer.Id.Value] = LayerChange.Added;
    }

    private void Regroup(Layer layer)
    {
        var group = PickGroup(group => group != layer.Parent && !Selection.IsIn(group, layer));
        if (group == layer.Parent || Selection.IsIn(group, layer) || arrived.Contains(layer)) return;
        layer.Detach();
        group.Insert(random.Next(group.GetChildren().Count + 1), layer);
        arrived.Add(layer);
        Note(layer, LayerChange.Regrouped);
    }

    /// <summary>Moves one layer past two or more that were there before, so that there is only one explanation with one layer.</summary>
    private void Restack(Layer group)
    {
        var residents = group.GetChildren().Where(layer => !arrived.Contains(layer)).ToList();
        if (residents.Count < 4) return;
        var from = random.Next(residents.Count);
        var to = random.Next(residents.Count);
        if (Math.Abs(from - to) < 2 || !IsFree(residents[from])) return;
        var (moved, target) = (residents[from], residents[to]);
        moved.Detach();
        group.Insert(target.IndexInParent + (to > from ? 1 : 0), moved);
        Note(moved, LayerChange.Restacked);
    }

    private Layer PickGroup(Func<Layer, bool> isAllowed)
    {
        var groups = New.GetLayers().Where(layer => layer.IsGroup).Prepend(New.Root).Where(isAllowed).ToList();
        return groups.Count == 0 ? New.Root : groups[random.Next(groups.Count)];
    }
}
