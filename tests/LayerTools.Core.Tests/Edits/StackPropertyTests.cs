using CsCheck;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

/// <summary>What must hold for every edit of the stack, tried on random trees.</summary>
public class StackPropertyTests
{
    private static readonly Gen<LayerFile> Trees = Gen.Int.Array[1, 14].Select(numbers =>
    {
        var count = 0;
        return File(Build(new Queue<int>(numbers), 0, ref count));
    });

    [Fact]
    public void Moves_keep_layers_order_and_clipping() => Gen.Select(Trees, Gen.Int[0, 13].Array[1, 4], Gen.Int[0, 13], Gen.Enum<MovePlace>()).Sample((file, chosen, target, place) =>
    {
        var all = file.GetLayers().ToList();
        Check(file, new MoveEdit(place, all[target % all.Count]), Choose(all, chosen), keepsAll: true);
    }, iter: 5_000);

    [Fact]
    public void Groups_keep_layers_order_and_clipping() => Gen.Select(Trees, Gen.Int[0, 13].Array[0, 4]).Sample((file, chosen) =>
        Check(file, new NewGroupEdit("New"), Choose([.. file.GetLayers()], chosen), keepsAll: true), iter: 3_000);

    [Fact]
    public void Removing_keeps_the_rest_as_it_was() => Gen.Select(Trees, Gen.Int[0, 13].Array[1, 4]).Sample((file, chosen) =>
        Check(file, new RemoveEdit(), Choose([.. file.GetLayers()], chosen), keepsAll: false), iter: 3_000);

    private static void Check(LayerFile file, LayerEdit edit, List<Layer> chosen, bool keepsAll)
    {
        var before = file.Sketch();
        var layers = file.GetLayers().ToList();
        var bases = layers.ToDictionary(layer => layer, layer => layer.Clipped ? ClippingRun.Of(layer).Base : null);
        EditPlan plan;
        try
        {
            plan = edit.Plan(file, chosen);
        }
        catch (Errors.LayeredFileException)
        {
            Assert.Equal(before, file.Sketch());
            return;
        }

        Assert.Equal(before, file.Sketch());
        var clipped = layers.Where(layer => layer.Clipped).ToList();
        var touched = chosen.Concat(chosen.SelectMany(layer => ClippingRun.Of(layer).Layers)).Concat(plan.Steps.Select(step => step.Layer!)).ToHashSet();
        plan.Apply();

        var left = file.GetLayers().ToList();
        Assert.Equal(Enumerable.Range(1, left.Count), left.Select(layer => layer.LayerNumber));
        if (keepsAll) Assert.Empty(layers.Except(left));

        // Who still is clipped is clipped to the same base; who is not any more was told to be released.
        var released = plan.Steps.Where(step => step.Property == "Clipped").Select(step => step.Layer!).ToList();
        Assert.Equal(released, clipped.Where(layer => !layer.Clipped).OrderBy(layer => released.IndexOf(layer)));
        Assert.All(clipped.Where(layer => layer.Clipped && left.Contains(layer)), layer => Assert.Same(bases[layer], ClippingRun.Of(layer).Base));

        // What was not touched keeps its order, and so does what was.
        var untouched = layers.Where(layer => left.Contains(layer) && !touched.Any(group => Selection.IsIn(layer, group))).ToHashSet();
        Assert.Equal(layers.Where(untouched.Contains), left.Where(untouched.Contains));
        foreach (var group in left.Where(layer => layer.IsGroup).Append(file.Root))
        {
            var movedHere = group.GetChildren().Where(layer => layers.Contains(layer) && plan.Steps.Any(step => step.Layer == layer && step.Property == "Place")).ToList();
            Assert.Equal(movedHere.OrderBy(layers.IndexOf), movedHere);
        }
    }

    private static List<Layer> Choose(List<Layer> all, int[] chosen) => [.. chosen.Select(i => all[i % all.Count])];

    private static Layer[] Build(Queue<int> numbers, int depth, ref int count)
    {
        var layers = new List<Layer>();
        while (numbers.Count > 0)
        {
            var number = (numbers.Dequeue() & int.MaxValue) % 8;
            if (number == 7 && depth > 0) break;
            var name = $"n{++count}";
            var layer = number < 5 ? Pixel(name) : Group(name, depth < 3 ? Build(numbers, depth + 1, ref count) : []);
            layer.Clipped = number is 2 or 3 or 4 or 6;
            layers.Add(layer);
        }

        return [.. layers];
    }
}
