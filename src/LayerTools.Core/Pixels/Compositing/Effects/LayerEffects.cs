using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Pixels.Compositing.Blending;
using LayerTools.Pixels.Compositing.Fills;

namespace LayerTools.Pixels.Compositing.Effects;

/// <summary>
/// The effects of one layer. Those that depend on more of the shape than one pixel are worked out when the first band reaches the layer, from
/// the shape of the whole layer as far as it matters, and forgotten after the last.
/// </summary>
internal sealed class LayerEffects : RowWindow
{
    /// <summary>px; programs offer up to 250 (from memory).</summary>
    private const int LargestSize = 1000;

    /// <summary>px; the whole way has to be held in memory.</summary>
    private const int FarthestShade = 2000;

    /// <summary>Pixels of one layer's shape.</summary>
    private const long LargestShape = 1 << 30;

    private readonly Func<Bounds, ShapePlane> drawShape;
    private readonly Bounds shapeBounds;
    private bool isPlaced;

    private LayerEffects(IReadOnlyList<PlacedEffect> items, Bounds area, Bounds shapeBounds, Func<Bounds, ShapePlane> drawShape)
    {
        Items = items;
        Area = area;
        this.shapeBounds = shapeBounds;
        this.drawShape = drawShape;
    }

    /// <summary>Back to front.</summary>
    public IReadOnlyList<PlacedEffect> Items { get; }

    /// <summary>Where the layer and its effects are seen, canvas px.</summary>
    public Bounds Area { get; }

    public override int FirstRow => Area.Top;

    public override int EndRow => Area.Bottom;

    /// <summary>Not a matter of bands.</summary>
    public override long RowBytes => 0;

    /// <summary>The effects that can be drawn; null if there are none.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="file">Its file.</param>
    /// <param name="bounds">The layer's rectangle without effects, canvas px.</param>
    /// <param name="box">What its gradients are fitted into.</param>
    /// <param name="visible">The rectangle that is drawn.</param>
    /// <param name="drawShape">Draws the coverage of the layer without effects in a rectangle.</param>
    public static LayerEffects? Create(Layer layer, LayerFile file, Bounds bounds, FillBox box, Bounds visible, Func<Bounds, ShapePlane> drawShape)
    {
        var effects = layer.Detail.GetEffects(file.Detail).Where(effect => FindReason(effect, file) is null).ToList();
        if (effects.Count == 0) return null;
        var area = Inflate(bounds, effects.Max(EffectShapes.GetReach)).Intersect(visible);
        if (area.IsEmpty) return null;
        var need = effects.Max(EffectShapes.GetNeed);
        var shapeBounds = Inflate(bounds, need).Intersect(Inflate(area, need));
        if (need > 0 && shapeBounds.Area > LargestShape)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"layer '{layer.LayerPath}'", -1, $"Its effects need {shapeBounds.Area} pixels of the layer at once; at most {LargestShape} can be held.", "Draw a smaller part of the file, or remove the layer's effects where it was made.");
        }

        return new LayerEffects([.. effects.Select(effect => new PlacedEffect(effect, Blenders.TryGet(effect.BlendMode) ?? Blenders.Normal, CreatePaint(effect)))], area, shapeBounds, drawShape);

        PixelSource CreatePaint(Effect effect) => effect switch
        {
            FillEffect fill => FillPixels.Create(fill.Fill, file, box)!,
            OutlineEffect outline => FillPixels.Create(outline.Fill, file, box.Inflate(EffectShapes.GetGradientReach(outline)))!,
            ShadeEffect shade => new ColorPixels(shade.Color),
            _ => throw new InvalidOperationException("An effect that cannot be drawn was told from the others before."),
        };
    }

    /// <summary>Why an effect cannot be drawn; null if it can.</summary>
    public static string? FindReason(Effect effect, LayerFile file) => effect switch
    {
        UndrawnEffect undrawn => undrawn.Reason,
        OutlineEffect { Size: > LargestSize } or ShadeEffect { Size: > LargestSize } => "layer effect of impossible size",
        ShadeEffect shade when Math.Max(Math.Abs(shade.Right), Math.Abs(shade.Down)) > FarthestShade => "layer effect too far from its layer",
        _ when Blenders.TryGet(effect.BlendMode) is null => $"layer effect in blend mode {effect.BlendMode}",
        FillEffect fill when FillPixels.FindReason(fill.Fill, file) is { } reason => $"layer effect: {reason}",
        OutlineEffect outline when FillPixels.FindReason(outline.Fill, file) is { } reason => $"layer effect: outline, {reason}",
        _ => null,
    };

    public override void MoveTo(int top, int bottom)
    {
        if (isPlaced || !Items.Any(item => EffectShapes.GetNeed(item.Effect) > 0)) return;
        var shape = drawShape(shapeBounds);
        foreach (var item in Items) item.Place(shape);
        isPlaced = true;
    }

    public override void Release(int bottom)
    {
        if (bottom >= EndRow) Dispose();
    }

    public override void Dispose()
    {
        foreach (var item in Items) item.Forget();
    }

    private static Bounds Inflate(Bounds bounds, int by)
    {
        static int Clamp(long value) => (int)Math.Max(int.MinValue / 2, Math.Min(int.MaxValue / 2, value));
        return bounds.IsEmpty ? bounds : new Bounds(Clamp((long)bounds.Left - by), Clamp((long)bounds.Top - by), Clamp((long)bounds.Right + by), Clamp((long)bounds.Bottom + by));
    }
}
