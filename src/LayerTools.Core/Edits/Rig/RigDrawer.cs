using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Edits.Rig;

/// <summary>Draws layers of a file apart from all others, each time as a small file that holds nothing else.</summary>
internal sealed class RigDrawer(LayerFile file, CancellationToken cancellation = default) : IDisposable
{
    /// <summary>How far effects may reach beyond a layer, px.</summary>
    private const int EffectReach = 1024;

    /// <summary>Twice the longest side a file can have, px.</summary>
    private const int LongestSide = 600_000;

    private readonly PixelReader reader = new(file);

    public PixelReader Reader => reader;

    /// <summary>Draws layers together.</summary>
    /// <param name="layers">Copies in no file, front to back.</param>
    /// <param name="context">What cuts them from outside.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, the layer is too large, or the file changed on disk.</exception>
    public RigPicture Draw(IReadOnlyList<Layer> layers, RigContext context)
    {
        var path = layers[layers.Count - 1].Name;
        var scratch = Put(layers, context.MaskedGroups);
        var area = new Bounds(0, 0, file.Width, file.Height);
        foreach (var layer in scratch.GetLayers().Where(layer => !layer.IsGroup)) area = area.Union(layer.Bounds);
        if (scratch.GetLayers().Any(layer => layer.Detail.Features.HasFlag(LayerFeatures.Effects))) area = Widen(area);
        if ((long)area.Right - area.Left > LongestSide || (long)area.Bottom - area.Top > LongestSide)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"layer '{path}'", -1, $"Its rectangle of {area} is larger than any canvas can be.", "Cut the layer where the file was made.");
        }

        var reach = new Compositor(scratch, reader, new CompositeOptions { Area = area }).FindReach();
        foreach (var shape in context.Shapes) reach = reach.Intersect(shape.Painted);
        return RigPicture.Draw(new Compositor(scratch, reader, new CompositeOptions { Area = reach, Cancellation = cancellation }), reach, context.Shapes);
    }

    /// <summary>Why layers cannot be drawn truthfully; empty if they can.</summary>
    /// <param name="layers">Copies in no file, front to back.</param>
    public IReadOnlyList<string> FindReasons(IReadOnlyList<Layer> layers)
    {
        var scratch = Put(layers, []);
        var reasons = CompositorSupport.FindNotDrawn(scratch);
        foreach (var layer in layers) layer.Detach();
        return reasons;
    }

    public void Dispose() => reader.Dispose();

    private LayerFile Put(IReadOnlyList<Layer> layers, IReadOnlyList<Layer> maskedGroups)
    {
        var scratch = new LayerFile(file.Path, file.Format, file.Width, file.Height, file.ColorMode, file.BitDepth, file.Detail);
        var parent = scratch.Root;
        foreach (var group in maskedGroups)
        {
            var mask = RigClones.MaskOnly(group);
            parent.Append(mask);
            parent = mask;
        }

        foreach (var layer in layers) parent.Append(layer);
        scratch.Renumber();
        return scratch;
    }

    private static Bounds Widen(Bounds area) => new(area.Left - EffectReach, area.Top - EffectReach, area.Right + EffectReach, area.Bottom + EffectReach);
}
