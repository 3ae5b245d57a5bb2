namespace LayerTools.Pixels.Compositing.Blending;

/// <summary>The mixing of whole colours, B(Cb, Cs) of W3C Compositing and Blending Level 1. Arguments and result are not premultiplied, 0 to 1.</summary>
internal interface IColorFunction
{
    RgbVectors Blend(RgbVectors backdrop, RgbVectors source);
}
