using LayerTools.Pixels.Compositing.Blending;

namespace LayerTools.Pixels.Compositing;

/// <summary>How a layer stands among its neighbours.</summary>
/// <param name="Blender">The mode it joins with.</param>
/// <param name="Opacities">Which of its opacities are applied here, and not to a whole run later.</param>
/// <param name="Inside">Whether it is clipped.</param>
/// <param name="Apart">Whether a pass-through group is put together apart from what lies below.</param>
internal sealed record DrawPlace(Blender Blender, Opacities Opacities, bool Inside, bool Apart)
{
    /// <summary>A layer with nothing around it, in normal mode with both its opacities.</summary>
    public static DrawPlace Alone { get; } = new(Blenders.Normal, Opacities.Both, Inside: false, Apart: true);

    /// <summary>The layer without mode and opacities, for whoever applies them when all that goes with it is put together.</summary>
    public static DrawPlace Bare { get; } = new(Blenders.Normal, Opacities.None, Inside: false, Apart: true);
}
