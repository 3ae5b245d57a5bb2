using LayerTools.Checks.Rules;

namespace LayerTools.Checks;

/// <summary>The catalogue of rules.</summary>
public static class CheckRules
{
    /// <summary>All rules, by name.</summary>
    public static IReadOnlyList<CheckRule> All { get; } =
    [
        new AdjustmentLeftIn(),
        new ArtOffCentre(),
        new BackPartInFront(),
        new CanvasSizeOffProfile(),
        new ClippedAcrossGroup(),
        new ClippingLeftIn(),
        new DeepNesting(),
        new DefaultLookingName(),
        new DuplicateName(),
        new EffectLeftIn(),
        new EmptyMargin(),
        new EmptyPart(),
        new EnlargedArt(),
        new FaintPixelsWidenBounds(),
        new ForeignColorProfile(),
        new GuideOffAxis(),
        new HalfTransparentHoles(),
        new HiddenLayer(),
        new MaskLeftIn(),
        new NameOffProfile(),
        new NoCenterGuide(),
        new NoColorProfile(),
        new NotEightBitRgb(),
        new NotPaintedUnderneath(),
        new OddCanvasWidth(),
        new OverlongName(),
        new PairDiffersInPlace(),
        new PairDiffersInSize(),
        new PartWithoutOpposite(),
        new PixelsOutsideCanvas(),
        new PlacedLeftIn(),
        new PpiOffProfile(),
        new ShapeLeftIn(),
        new SharedName(),
        new SideContradictsPlace(),
        new SketchOrGuideLayer(),
        new StackOutOfOrder(),
        new StrayIslands(),
        new TextLeftIn(),
        new TextureBudgetExceeded(),
        new TooLittleDetail(),
        new UnknownName(),
        new UnmarkedPart(),
        new UntrimmedName(),
    ];

    /// <summary>The rule of an id, upper and lower case being the same; null if there is none.</summary>
    public static CheckRule? Find(string id) => All.FirstOrDefault(rule => string.Equals(rule.Id, id, StringComparison.OrdinalIgnoreCase));
}
