namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>A layer's two opacities.</summary>
[Flags]
internal enum Opacities
{
    None = 0,

    Layer = 1,

    Fill = 2,

    Both = Layer | Fill,
}
