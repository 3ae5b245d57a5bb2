using LayerTools.Checks.Rules;

namespace LayerTools.Checks;

/// <summary>The catalogue of rules.</summary>
public static class CheckRules
{
    /// <summary>All rules, by name.</summary>
    public static IReadOnlyList<CheckRule> All { get; } =
    [
        new CanvasSizeOffProfile(),
        new EmptyMargin(),
        new ForeignColorProfile(),
        new GuideOffAxis(),
        new NoCenterGuide(),
        new NoColorProfile(),
        new NotEightBitRgb(),
        new NotPaintedUnderneath(),
        new OddCanvasWidth(),
        new PpiOffProfile(),
    ];

    /// <summary>The rule of an id, upper and lower case being the same; null if there is none.</summary>
    public static CheckRule? Find(string id) => All.FirstOrDefault(rule => string.Equals(rule.Id, id, StringComparison.OrdinalIgnoreCase));
}
