using LayerTools.Model;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing.Adjustments;
using LayerTools.Pixels.Compositing.Blending;
using LayerTools.Pixels.Compositing.Effects;
using LayerTools.Pixels.Compositing.Fills;
using LayerTools.Pixels.Compositing.Masks;
using LayerTools.Pixels.Compositing.Steps;

namespace LayerTools.Pixels.Compositing;

/// <summary>What to draw, back to front, and the stored channels it needs.</summary>
internal sealed class DrawPlan : IDisposable
{
    private readonly LayerFile file;
    private readonly PixelReader reader;
    private readonly Func<Layer, bool> shows;
    private readonly Layer? unmasked;
    private readonly CompositeOptions options;
    private readonly DescribedContent described;
    private readonly PlanWindows windows;
    private KnockoutScope scope;
    private LightCurve? curve;

    private DrawPlan(LayerFile file, PixelReader reader, CompositeOptions options)
    {
        this.file = file;
        this.reader = reader;
        this.options = options;
        described = new DescribedContent(file);
        windows = new PlanWindows(file, reader);
        shows = options.Shows ?? (layer => layer.Visible);
        unmasked = options.Unmasked ? options.Subject : null;
        Area = options.Area ?? options.Subject?.ContentBounds ?? new Bounds(0, 0, file.Width, file.Height);
        scope = new KnockoutScope(parent: null, isOpen: FindBackground(file) is not null);
        Steps = options.Subject is { } subject ? AsList(options.Plain ? PlanPlain(subject, DrawPlace.Bare) : Plan(subject, DrawPlace.Alone)) : PlanAll(file.Root);
    }

    /// <summary>A plan for the coverage of a layer alone, whatever its opacity and without its effects.</summary>
    private DrawPlan(DrawPlan whole, Layer layer, Bounds area)
    {
        (file, reader, options, shows, described) = (whole.file, whole.reader, whole.options, whole.shows, whole.described);
        windows = new PlanWindows(file, reader);
        Area = area;
        scope = new KnockoutScope(parent: null, isOpen: false);
        Steps = AsList(PlanPlain(layer, DrawPlace.Bare));
    }

    public Bounds Area { get; }

    public IReadOnlyList<DrawStep> Steps { get; }

    public IReadOnlyList<RowWindow> Windows => windows.All;

    public int ColorCount => MixedColors.GetCount(file);

    public static DrawPlan Create(LayerFile file, PixelReader reader, CompositeOptions options) => new(file, reader, options);

    public void Dispose() => windows.Dispose();

    private static List<DrawStep> AsList(DrawStep? step) => step is null ? [] : [step];

    private static Bounds Unite(IEnumerable<DrawStep> steps) => steps.Aggregate(Bounds.Empty, (all, step) => all.Union(step.Area));

    /// <summary>Keeps adjustments, which reach everywhere, within what they can change.</summary>
    private static List<DrawStep> Crop(IEnumerable<DrawStep> steps, Bounds bounds) =>
        [.. steps.Select(step => step is AdjustmentStep adjustment ? adjustment.Within(bounds) : step)];

    /// <summary>The layer that lies behind all others and is opaque everywhere, as the backdrop of most pictures is; null if there is none.</summary>
    private static Layer? FindBackground(LayerFile file) =>
        file.GetChildren() is [.., { Kind: LayerKind.Pixel, Visible: true, Clipped: false } last] && last.FindPlane(PlaneRole.Alpha) is null ? last : null;

    /// <summary>The layers of an open or isolated group.</summary>
    private List<DrawStep> PlanGroup(Layer group, bool isOpen)
    {
        var outer = scope;
        scope = new KnockoutScope(outer, isOpen);
        var steps = PlanAll(group);
        if (scope.Slot is { } slot) steps.Insert(0, new KeepStep(Area, slot));
        scope = outer;
        return steps;
    }

    private List<DrawStep> PlanAll(Layer group)
    {
        var steps = new List<DrawStep>();
        var background = FindBackground(file);
        int? bottom = null;
        foreach (var run in ClippingRun.Split(group.GetChildren()))
        {
            if (run.Base is null) steps.AddRange(PlanEach(run.Clipped, inside: false));
            else if (shows(run.Base) && Plan(run.Base, run.Clipped) is { } step) steps.Add(step);
            if (group.IsRoot && ReferenceEquals(run.Base, background)) bottom ??= steps.Count;
        }

        if (group.IsRoot && scope.Slot is { } slot) steps.Insert(bottom ?? 0, new KeepStep(Area, slot));
        return steps;
    }

    private DrawStep? Plan(Layer below, IReadOnlyList<Layer> clipped)
    {
        if (!LayerBlending.CutsThrough(below)) return PlanRun(below, clipped);
        var backdrop = below.Detail.Blending.Knockout == Knockout.ToGroup ? scope.FindBelowGroup() : scope.FindBottom();
        if (PlanPlain(below, new DrawPlace(Blenders.Normal, Opacities.Layer, Inside: false, Apart: true)) is not { } shape) return null;
        return new KnockoutStep(shape.Area, backdrop, PlanRun(below, clipped, Opacities.Fill), shape);
    }

    private DrawStep? PlanRun(Layer below, IReadOnlyList<Layer> clipped, Opacities opacities = Opacities.Both)
    {
        var isApart = below.Detail.Features.HasFlag(LayerFeatures.ClippedApart);
        var front = PlanEach(clipped, inside: !isApart, apart: true).ToList();
        var alone = new DrawPlace(LayerBlending.GetBlender(below), opacities, Inside: false, Apart: false);
        if (front.Count == 0) return Plan(below, alone);
        if (!isApart && GetEffects(below) is { } effects) return PlanEffects(below, front, effects, alone);
        if (PlanPlain(below, DrawPlace.Bare) is not { } step) return null;
        var cut = Crop(front, step.Area);
        if (isApart)
        {
            var own = Plan(below, alone);
            return new ApartStep(own is null ? step.Area : step.Area.Union(own.Area), own, step, cut);
        }

        return new GroupStep(step.Area, [step, .. cut], new Composition(LayerBlending.GetBlender(below), LayerBlending.GetOpacity(below, opacities), Mask: null, Inside: false, BlendLimits.Find(below)));
    }

    /// <summary>Layers one by one, back to front. Those with nothing to be clipped to are drawn as if they were not clipped.</summary>
    /// <param name="layers">The layers, front to back.</param>
    /// <param name="inside">Whether they stay inside what was drawn before.</param>
    /// <param name="apart">Whether pass-through groups among them are put together apart.</param>
    private IEnumerable<DrawStep> PlanEach(IReadOnlyList<Layer> layers, bool inside, bool apart = false) =>
        layers.Reverse().Where(shows).SelectMany(layer => AsList(Plan(layer, new DrawPlace(LayerBlending.GetBlender(layer), Opacities.Both, inside, apart))));

    private DrawStep? Plan(Layer layer, DrawPlace place) => GetEffects(layer) is { } effects ? PlanEffects(layer, [], effects, place) : PlanPlain(layer, place);

    /// <summary>A layer and what is clipped to it, with the layer's effects. Whether its mode takes fill opacity as it is or into its formula is the blender's business.</summary>
    private EffectsStep? PlanEffects(Layer layer, IReadOnlyList<DrawStep> clipped, LayerEffects effects, DrawPlace place)
    {
        var opacity = LayerBlending.GetOpacity(layer, place.Opacities & Opacities.Layer);
        if (opacity == 0) return null;
        windows.Add(effects);
        IReadOnlyList<DrawStep> steps = PlanPlain(layer, DrawPlace.Bare) is { } step ? [step, .. Crop(clipped, step.Area)] : [];
        var composition = new Composition(place.Blender, opacity, Mask: null, place.Inside, BlendLimits.Find(layer));
        return new EffectsStep(effects, steps, composition, LayerBlending.GetOpacity(layer, place.Opacities & Opacities.Fill), layer.Detail.Features.HasFlag(LayerFeatures.InteriorBlending), described.IsSeenThrough(layer) ? described.CreateFill(layer) : null);
    }

    private LayerEffects? GetEffects(Layer layer) => MixedColors.AreLight(file) && layer.Detail.Features.HasFlag(LayerFeatures.Effects)
        ? LayerEffects.Create(layer, file, described.GetSeenBounds(layer), described.GetFillBox(layer), Area, area => DrawShape(layer, area))
        : null;

    private ShapePlane DrawShape(Layer layer, Bounds area)
    {
        using var plan = new DrawPlan(this, layer, area);
        var sink = new ShapeSink(area);
        BandDrawing.Draw(plan, BandDrawing.ChooseBandRows(plan), sink, options);
        return sink.Shape;
    }

    private DrawStep? PlanPlain(Layer layer, DrawPlace place)
    {
        var opacity = LayerBlending.GetOpacity(layer, place.Opacities);
        if (opacity == 0) return null;
        var board = layer.IsGroup ? layer.Detail.Artboard : null;
        var isOpen = layer.BlendMode == BlendMode.PassThrough && !place.Apart && board is null;
        var steps = layer.IsGroup ? PlanGroup(layer, isOpen) : null;
        var masks = LayerMasks.Find(layer, described.Has(layer));
        if (layer == unmasked) masks = new LayerMasks(Stored: null, layer.Kind == LayerKind.Shape ? masks.Path : null);
        var path = masks.Path is null ? null : new PathFill(masks.Path.Path, file.Width, file.Height);
        if (board is { Background: { } color } && MixedColors.AreLight(file)) steps!.Insert(0, new LayerStep(board.Bounds.Intersect(Area), new ColorPixels(color), new Composition(Blenders.Normal, 1f, Mask: null, Inside: false)));
        if (steps is not null && !isOpen) steps = Crop(steps, Unite(steps.Where(step => step is not AdjustmentStep)));
        var area = (steps is null ? GetPixelBounds(layer) : Unite(steps)).Intersect(Area);
        if (board is not null) area = area.Intersect(board.Bounds);
        if (masks.Stored is { HidesOutside: true, Feather: <= 0 } stored) area = area.Intersect(stored.Bounds);
        if (masks.Path is { Density: >= 1f, Feather: <= 0 } && path!.Outside == 0f) area = area.Intersect(path.Bounds);
        if (area.IsEmpty) return null;

        var coverage = windows.AddMasks(layer, masks, path, area);
        var composition = new Composition(place.Blender, opacity, coverage, place.Inside || layer.Kind == LayerKind.Adjustment, place.Opacities.HasFlag(Opacities.Fill) ? BlendLimits.Find(layer) : null);
        if (layer.Kind == LayerKind.Adjustment) return PlanAdjustment(layer, area, composition);
        if (steps is null) return described.Has(layer) ? PlanFill(layer, area, composition) : PlanPixels(layer, area, composition);
        return isOpen ? new PassThroughStep(area, steps, composition) : new GroupStep(area, steps, composition);
    }

    private AdjustmentStep? PlanAdjustment(Layer layer, Bounds area, Composition composition)
    {
        if (layer.Detail.Adjustment is not { } adjustment || !ColorAdjusters.CanDraw(adjustment, file.ColorMode)) return null;
        curve ??= file.ColorMode == ColorMode.Rgb ? LightCurve.Power : reader.ReadProfile()?.FindLightCurve() ?? LightCurve.Power;
        var adjuster = ColorAdjusters.Create(adjustment, new AdjusterContext(file.ColorMode, file.BitDepth, curve));
        return new AdjustmentStep(area, adjuster, composition);
    }

    private LayerStep? PlanPixels(Layer layer, Bounds area, Composition composition)
    {
        var colors = new PlaneWindow?[ColorCount];
        for (var channel = 0; channel < colors.Length; channel++) colors[channel] = windows.AddChannel(layer, PlaneRole.Color0 + channel, area);
        var isStored = Array.Exists(colors, window => window is not null);
        return isStored ? new LayerStep(area, new LayerPixels(colors, windows.AddChannel(layer, PlaneRole.Alpha, area)), composition) : null;
    }

    private LayerStep? PlanFill(Layer layer, Bounds area, Composition composition) =>
        described.CreateFill(layer) is { } pixels ? new LayerStep(area, described.IsSeenThrough(layer) ? new OpaquePixels(pixels) : pixels, composition) : null;

    /// <summary>An adjustment, and a fill that was not also stored as pixels, reach everywhere.</summary>
    private Bounds GetPixelBounds(Layer layer) => layer.Kind == LayerKind.Adjustment || described.Has(layer) ? Area : layer.Bounds;
}
