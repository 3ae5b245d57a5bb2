using LayerTools.Model;
using LayerTools.Model.Fills;
using LayerTools.Pixels.Colors;
using LayerTools.Pixels.Compositing.Adjustments;
using LayerTools.Pixels.Compositing.Effects;
using LayerTools.Pixels.Compositing.Fills;

namespace LayerTools.Pixels.Compositing;

/// <summary>What to draw, back to front, and the stored channels it needs.</summary>
internal sealed class DrawPlan : IDisposable
{
    private readonly LayerFile file;
    private readonly PixelReader reader;
    private readonly Func<Layer, bool> shows;
    private readonly Layer? unmasked;
    private readonly List<RowWindow> windows = [];
    private KnockoutScope scope;
    private readonly CompositeOptions options;
    private LightCurve? curve;

    private DrawPlan(LayerFile file, PixelReader reader, CompositeOptions options)
    {
        this.file = file;
        this.reader = reader;
        this.options = options;
        shows = options.Shows ?? (layer => layer.Visible);
        unmasked = options.Unmasked ? options.Subject : null;
        Area = options.Area ?? options.Subject?.ContentBounds ?? new Bounds(0, 0, file.Width, file.Height);
        scope = new KnockoutScope(parent: null, isOpen: FindBackground(file) is not null);
        Steps = options.Subject is { } subject ? AsList(options.Plain ? PlanPlain(subject, Base) : Plan(subject, Alone)) : PlanAll(file.Root);
    }

    /// <summary>A plan for the coverage of a layer alone, whatever its opacity and without its effects.</summary>
    private DrawPlan(DrawPlan whole, Layer layer, Bounds area)
    {
        (file, reader, options, shows) = (whole.file, whole.reader, whole.options, whole.shows);
        Area = area;
        scope = new KnockoutScope(parent: null, isOpen: false);
        Steps = AsList(PlanPlain(layer, Base));
    }

    public Bounds Area { get; }

    public IReadOnlyList<DrawStep> Steps { get; }

    public IReadOnlyList<RowWindow> Windows => windows;

    public int ColorCount => GetColorCount(file);

    private static Place Alone { get; } = new(Blenders.Normal, Opacities.Both, Inside: false, Apart: true);

    private static Place Base { get; } = new(Blenders.Normal, Opacities.None, Inside: false, Apart: true);

    public static DrawPlan Create(LayerFile file, PixelReader reader, CompositeOptions options) => new(file, reader, options);

    /// <summary>1 for grey and duotone, 3 for red, green and blue and for L*a*b*, 4 for inks.</summary>
    public static int GetColorCount(LayerFile file) => file.ColorMode switch { ColorMode.Rgb or ColorMode.Lab => 3, ColorMode.Cmyk => 4, _ => 1 };

    /// <summary>Whether the file's colours are grey or RGB, which described fills, effects and adjustments are made for.</summary>
    public static bool MixesLight(LayerFile file) => file.ColorMode is ColorMode.Rgb or ColorMode.Grayscale or ColorMode.Duotone;

    /// <summary>Whether the layer is a fill whose look the file only describes.</summary>
    public static bool IsLiveFill(Layer layer) => layer.Kind is LayerKind.Fill or LayerKind.Shape && !layer.HasStoredPixels;

    public void Dispose()
    {
        foreach (var window in windows) window.Dispose();
    }

    private static List<DrawStep> AsList(DrawStep? step) => step is null ? [] : [step];

    private static Bounds Unite(IEnumerable<DrawStep> steps) => steps.Aggregate(Bounds.Empty, (all, step) => all.Union(step.Area));

    /// <summary>Keeps adjustments, which reach everywhere, within what they can change.</summary>
    private static List<DrawStep> Crop(IEnumerable<DrawStep> steps, Bounds bounds) =>
        [.. steps.Select(step => step is AdjustmentStep adjustment ? adjustment.Within(bounds) : step)];

    /// <summary>A mode that is not in the table is drawn as normal; whoever cannot accept that asks <see cref="CompositorSupport"/> first.</summary>
    private static Blender GetBlender(Layer layer)
    {
        if (!CompositorSupport.CanMix(layer)) return Blenders.Normal;
        return FillIsInBlender(layer) ? Blenders.TryGetFilled(layer.BlendMode, layer.FillOpacity / (float)byte.MaxValue)! : Blenders.TryGet(layer.BlendMode) ?? Blenders.Normal;
    }

    private static float GetOpacity(Layer layer, Opacities opacities)
    {
        var opacity = opacities.HasFlag(Opacities.Layer) ? layer.OpacityByte / (float)byte.MaxValue : 1f;
        return opacities.HasFlag(Opacities.Fill) && !FillIsInBlender(layer) ? opacity * layer.FillOpacity / byte.MaxValue : opacity;
    }

    private static bool FillIsInBlender(Layer layer) => layer.FillOpacity < byte.MaxValue && !Blenders.FillActsAsOpacity(layer.BlendMode);

    /// <summary>The layer that lies behind all others and is opaque everywhere, as the backdrop of most pictures is; null if there is none.</summary>
    private static Layer? FindBackground(LayerFile file) =>
        file.GetChildren() is [.., { Kind: LayerKind.Pixel, Visible: true, Clipped: false } last] && last.FindPlane(PlaneRole.Alpha) is null ? last : null;

    /// <summary>A layer that cuts through and then covers the hole itself needs no care.</summary>
    public static bool CutsThrough(Layer layer) =>
        layer.Detail.Blending.Knockout != Knockout.None && (layer.FillOpacity < byte.MaxValue || layer.BlendMode != BlendMode.Normal);

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
        if (!CutsThrough(below)) return PlanRun(below, clipped);
        var backdrop = below.Detail.Blending.Knockout == Knockout.ToGroup ? scope.FindBelowGroup() : scope.FindBottom();
        if (PlanPlain(below, new Place(Blenders.Normal, Opacities.Layer, Inside: false, Apart: true)) is not { } shape) return null;
        return new KnockoutStep(shape.Area, backdrop, PlanRun(below, clipped, Opacities.Fill), shape);
    }

    private DrawStep? PlanRun(Layer below, IReadOnlyList<Layer> clipped, Opacities opacities = Opacities.Both)
    {
        var isApart = below.Detail.Features.HasFlag(LayerFeatures.ClippedApart);
        var front = PlanEach(clipped, inside: !isApart, apart: true).ToList();
        var alone = new Place(GetBlender(below), opacities, Inside: false, Apart: false);
        if (front.Count == 0) return Plan(below, alone);
        if (!isApart && GetEffects(below) is { } effects) return PlanEffects(below, front, effects, alone);
        if (PlanPlain(below, Base) is not { } step) return null;
        var cut = Crop(front, step.Area);
        if (isApart)
        {
            var own = Plan(below, alone);
            return new ApartStep(own is null ? step.Area : step.Area.Union(own.Area), own, step, cut);
        }

        return new GroupStep(step.Area, [step, .. cut], new Composition(GetBlender(below), GetOpacity(below, opacities), Mask: null, Inside: false, BlendLimits.Find(below)));
    }

    /// <summary>Layers one by one, back to front. Those with nothing to be clipped to are drawn as if they were not clipped.</summary>
    /// <param name="layers">The layers, front to back.</param>
    /// <param name="inside">Whether they stay inside what was drawn before.</param>
    /// <param name="apart">Whether pass-through groups among them are put together apart.</param>
    private IEnumerable<DrawStep> PlanEach(IReadOnlyList<Layer> layers, bool inside, bool apart = false) =>
        layers.Reverse().Where(shows).SelectMany(layer => AsList(Plan(layer, new Place(GetBlender(layer), Opacities.Both, inside, apart))));

    private DrawStep? Plan(Layer layer, Place place) => GetEffects(layer) is { } effects ? PlanEffects(layer, [], effects, place) : PlanPlain(layer, place);

    /// <summary>A layer and what is clipped to it, with the layer's effects. Whether its mode takes fill opacity as it is or into its formula is the blender's business.</summary>
    private EffectsStep? PlanEffects(Layer layer, IReadOnlyList<DrawStep> clipped, LayerEffects effects, Place place)
    {
        var opacity = GetOpacity(layer, place.Opacities & Opacities.Layer);
        if (opacity == 0) return null;
        windows.Add(effects);
        IReadOnlyList<DrawStep> steps = PlanPlain(layer, Base) is { } step ? [step, .. Crop(clipped, step.Area)] : [];
        var composition = new Composition(place.Blender, opacity, Mask: null, place.Inside, BlendLimits.Find(layer));
        return new EffectsStep(effects, steps, composition, GetOpacity(layer, place.Opacities & Opacities.Fill), layer.Detail.Features.HasFlag(LayerFeatures.InteriorBlending), IsSeenThrough(layer) ? CreateFill(layer) : null);
    }

    private LayerEffects? GetEffects(Layer layer) => MixesLight(file) && layer.Detail.Features.HasFlag(LayerFeatures.Effects)
        ? LayerEffects.Create(layer, file, GetSeenBounds(layer), GetFillBox(layer), Area, area => DrawShape(layer, area))
        : null;

    /// <summary>The layer's rectangle as far as paths and masks leave it.</summary>
    private Bounds GetSeenBounds(Layer layer)
    {
        var bounds = layer.IsGroup ? layer.ContentBounds : IsDescribed(layer) ? new Bounds(0, 0, file.Width, file.Height) : layer.Bounds;
        if (IsDescribed(layer) && LayerMasks.Find(layer, asDescribed: true).Path is { Feather: <= 0, Density: >= 1f } mask && new PathFill(mask.Path, file.Width, file.Height) is { Outside: 0f } path) bounds = path.Bounds;
        return LayerMasks.Find(layer).Stored is { HidesOutside: true, Feather: <= 0 } stored ? bounds.Intersect(stored.Bounds) : bounds;
    }

    private ShapePlane DrawShape(Layer layer, Bounds area)
    {
        using var plan = new DrawPlan(this, layer, area);
        var sink = new ShapeSink(area);
        BandDrawing.Draw(plan, BandDrawing.ChooseBandRows(plan), sink, options);
        return sink.Shape;
    }

    private DrawStep? PlanPlain(Layer layer, Place place)
    {
        var opacity = GetOpacity(layer, place.Opacities);
        if (opacity == 0) return null;
        var board = layer.IsGroup ? layer.Detail.Artboard : null;
        var isOpen = layer.BlendMode == BlendMode.PassThrough && !place.Apart && board is null;
        var steps = layer.IsGroup ? PlanGroup(layer, isOpen) : null;
        var masks = LayerMasks.Find(layer, IsDescribed(layer));
        if (layer == unmasked) masks = new LayerMasks(Stored: null, layer.Kind == LayerKind.Shape ? masks.Path : null);
        var path = masks.Path is null ? null : new PathFill(masks.Path.Path, file.Width, file.Height);
        if (board is { Background: { } color } && MixesLight(file)) steps!.Insert(0, new LayerStep(board.Bounds.Intersect(Area), new ColorPixels(color), new Composition(Blenders.Normal, 1f, Mask: null, Inside: false)));
        if (steps is not null && !isOpen) steps = Crop(steps, Unite(steps.Where(step => step is not AdjustmentStep)));
        var area = (steps is null ? GetPixelBounds(layer) : Unite(steps)).Intersect(Area);
        if (board is not null) area = area.Intersect(board.Bounds);
        if (masks.Stored is { HidesOutside: true, Feather: <= 0 } stored) area = area.Intersect(stored.Bounds);
        if (masks.Path is { Density: >= 1f, Feather: <= 0 } && path!.Outside == 0f) area = area.Intersect(path.Bounds);
        if (area.IsEmpty) return null;

        var coverage = Join(masks.Stored is null ? null : CoverStored(layer, masks.Stored, area), path is null ? null : CoverPath(layer, masks.Path!, path, area));
        var composition = new Composition(place.Blender, opacity, coverage, place.Inside || layer.Kind == LayerKind.Adjustment, place.Opacities.HasFlag(Opacities.Fill) ? BlendLimits.Find(layer) : null);
        if (layer.Kind == LayerKind.Adjustment) return PlanAdjustment(layer, area, composition);
        if (steps is null) return IsDescribed(layer) ? PlanFill(layer, area, composition) : PlanPixels(layer, area, composition);
        return isOpen ? new PassThroughStep(area, steps, composition) : new GroupStep(area, steps, composition);
    }

    private AdjustmentStep? PlanAdjustment(Layer layer, Bounds area, Composition composition)
    {
        if (layer.Detail.Adjustment is not { } adjustment || !ColorAdjusters.CanDraw(adjustment, file.ColorMode)) return null;
        curve ??= file.ColorMode == ColorMode.Rgb ? LightCurve.Power : reader.ReadProfile()?.FindLightCurve() ?? LightCurve.Power;
        var adjuster = ColorAdjusters.Create(adjustment, new AdjusterContext(file.ColorMode, file.BitDepth, curve));
        return new AdjustmentStep(area, adjuster, composition);
    }

    private static ICoverage? Join(ICoverage? one, ICoverage? other) => one is null || other is null ? one ?? other : new CoveragePair(one, other);

    private ICoverage CoverStored(Layer layer, StoredMask mask, Bounds area)
    {
        if (!(mask.Feather > 0) || mask.Bounds.IsEmpty) return new MaskCoverage(mask.Bounds.IsEmpty ? null : AddWindow(layer, mask.Role, area), mask);
        return new SoftCoverage(AddSoft(layer, mask.Bounds, area, mask.Outside, mask.Feather, bounds => SharpRows.Read(reader, layer, mask, file.BitDepth, bounds)), mask.Density, mask.IsInverted);
    }

    private ICoverage CoverPath(Layer layer, PathMask mask, PathFill path, Bounds area)
    {
        if (!(mask.Feather > 0)) return new PathCoverage(path, mask.Density);
        return new SoftCoverage(AddSoft(layer, path.Bounds, area, path.Outside, mask.Feather, bounds => SharpRows.Read(path, bounds)), mask.Density, isInverted: false);
    }

    private SoftWindow AddSoft(Layer layer, Bounds inner, Bounds area, float outside, double sigma, Func<Bounds, IEnumerable<float[]>> readRows)
    {
        var window = new SoftWindow(layer, inner, area, outside, sigma, readRows);
        windows.Add(window);
        return window;
    }

    private LayerStep? PlanPixels(Layer layer, Bounds area, Composition composition)
    {
        var colors = new PlaneWindow?[ColorCount];
        for (var channel = 0; channel < colors.Length; channel++) colors[channel] = AddWindow(layer, PlaneRole.Color0 + channel, area);
        var isStored = Array.Exists(colors, window => window is not null);
        return isStored ? new LayerStep(area, new LayerPixels(colors, AddWindow(layer, PlaneRole.Alpha, area)), composition) : null;
    }

    private LayerStep? PlanFill(Layer layer, Bounds area, Composition composition) =>
        CreateFill(layer) is { } pixels ? new LayerStep(area, IsSeenThrough(layer) ? new OpaquePixels(pixels) : pixels, composition) : null;

    private PixelSource? CreateFill(Layer layer) => MixesLight(file) && layer.Detail.Fill is { } fill ? FillPixels.Create(fill, file, GetFillBox(layer)) : null;

    /// <summary>What a gradient is fitted into: the canvas, or the part of it that path and mask leave. (Observed in real files.)</summary>
    private FillBox GetFillBox(Layer layer)
    {
        var box = FillBox.Of(layer.Kind is LayerKind.Fill or LayerKind.Shape ? new Bounds(0, 0, file.Width, file.Height) : layer.ContentBounds);
        if (layer.Kind == LayerKind.Shape && LayerMasks.Find(layer, asDescribed: true).Path is { } mask && new PathFill(mask.Path, file.Width, file.Height) is { Outside: 0f, Box: { } path }) box = path;
        return LayerMasks.Find(layer).Stored is { HidesOutside: true } stored ? box.Intersect(FillBox.Of(stored.Bounds)) : box;
    }

    /// <summary>Whether the layer's pixels are made from its description.</summary>
    private bool IsDescribed(Layer layer) => IsLiveFill(layer) || IsSeenThrough(layer);

    /// <summary>
    /// Whether the layer has effects and a see-through fill. Effects follow the whole shape then, not what its stored pixels show of it
    /// (observed in a real file), so that shape and fill are told apart by drawing both from their description.
    /// </summary>
    private bool IsSeenThrough(Layer layer) =>
        MixesLight(file) && (layer.Kind is LayerKind.Shape or LayerKind.Fill)
        && layer.Detail.Features.HasFlag(LayerFeatures.Effects) && !layer.Detail.Features.HasFlag(LayerFeatures.PathStroke)
        && (layer.Kind == LayerKind.Fill || layer.Detail.VectorPath is { IsDisabled: false })
        && layer.Detail.Fill is GradientFill { Gradient.IsOpaque: false } fill && FillPixels.FindReason(fill, file) is null;

    /// <summary>An adjustment, and a fill that was not also stored as pixels, reach everywhere.</summary>
    private Bounds GetPixelBounds(Layer layer) => layer.Kind == LayerKind.Adjustment || IsDescribed(layer) ? Area : layer.Bounds;

    private PlaneWindow? AddWindow(Layer layer, PlaneRole role, Bounds area)
    {
        if (layer.FindPlane(role) is null) return null;
        var window = new PlaneWindow(reader, layer, role, file.BitDepth, area);
        windows.Add(window);
        return window;
    }

    /// <summary>A layer's two opacities.</summary>
    [Flags]
    private enum Opacities
    {
        None = 0,

        Layer = 1,

        Fill = 2,

        Both = Layer | Fill,
    }

    /// <summary>How a layer stands among its neighbours.</summary>
    /// <param name="Blender">The mode it joins with.</param>
    /// <param name="Opacities">Which of its opacities are applied here, and not to a whole run later.</param>
    /// <param name="Inside">Whether it is clipped.</param>
    /// <param name="Apart">Whether a pass-through group is put together apart from what lies below.</param>
    private sealed record Place(Blender Blender, Opacities Opacities, bool Inside, bool Apart);
}
