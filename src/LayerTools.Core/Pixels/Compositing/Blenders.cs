using LayerTools.Model;

namespace LayerTools.Pixels.Compositing;

/// <summary>The modes that can be drawn. What is not in this table is not supported.</summary>
internal static class Blenders
{
    private static readonly Dictionary<BlendMode, Blender> Table = new()
    {
        [BlendMode.Normal] = new NormalBlender(),
        [BlendMode.Multiply] = new SeparableBlender<BlendFunctions.Multiply>(),
        [BlendMode.Screen] = new SeparableBlender<BlendFunctions.Screen>(),
        [BlendMode.Overlay] = new SeparableBlender<BlendFunctions.Overlay>(),
        [BlendMode.Darken] = new SeparableBlender<BlendFunctions.Darken>(),
        [BlendMode.Lighten] = new SeparableBlender<BlendFunctions.Lighten>(),
        [BlendMode.ColorDodge] = new SeparableBlender<BlendFunctions.ColorDodge>(),
        [BlendMode.ColorBurn] = new SeparableBlender<BlendFunctions.ColorBurn>(),
        [BlendMode.HardLight] = new SeparableBlender<BlendFunctions.HardLight>(),
        [BlendMode.SoftLight] = new SeparableBlender<BlendFunctions.SoftLight>(),
        [BlendMode.Difference] = new SeparableBlender<BlendFunctions.Difference>(),
        [BlendMode.Exclusion] = new SeparableBlender<BlendFunctions.Exclusion>(),
    };

    public static IReadOnlyCollection<BlendMode> Supported => Table.Keys;

    public static Blender Normal => Table[BlendMode.Normal];

    public static Blender? TryGet(BlendMode mode) => Table.TryGetValue(mode, out var blender) ? blender : null;

    /// <summary>Whether fill opacity acts in this mode as plain opacity does. In these three it scales the mixing itself (from memory, not from the published specification).</summary>
    public static bool FillActsAsOpacity(BlendMode mode) => mode is not (BlendMode.ColorBurn or BlendMode.ColorDodge or BlendMode.Difference);
}
