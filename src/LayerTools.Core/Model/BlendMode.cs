namespace LayerTools.Model;

/// <summary>How a layer's colours mix with what lies below. The first sixteen are those of W3C Compositing and Blending Level 1.</summary>
public enum BlendMode
{
    /// <summary>The layer's colour alone.</summary>
    Normal,

    /// <summary>Product of both colours.</summary>
    Multiply,

    /// <summary>Inverse of the product of the inverses.</summary>
    Screen,

    /// <summary>Multiply or screen, by the colour below.</summary>
    Overlay,

    /// <summary>The darker value of each channel.</summary>
    Darken,

    /// <summary>The lighter value of each channel.</summary>
    Lighten,

    /// <summary>Brightens what is below.</summary>
    ColorDodge,

    /// <summary>Darkens what is below.</summary>
    ColorBurn,

    /// <summary>Multiply or screen, by the layer's colour.</summary>
    HardLight,

    /// <summary>Darkens or lightens softly.</summary>
    SoftLight,

    /// <summary>Absolute difference.</summary>
    Difference,

    /// <summary>Like difference with less contrast.</summary>
    Exclusion,

    /// <summary>Hue of the layer.</summary>
    Hue,

    /// <summary>Saturation of the layer.</summary>
    Saturation,

    /// <summary>Hue and saturation of the layer.</summary>
    Color,

    /// <summary>Luminosity of the layer.</summary>
    Luminosity,

    /// <summary>Pixels of the layer or none, by its opacity.</summary>
    Dissolve,

    /// <summary>Sum of both less one.</summary>
    LinearBurn,

    /// <summary>Sum of both.</summary>
    LinearDodge,

    /// <summary>The colour that is darker as a whole.</summary>
    DarkerColor,

    /// <summary>The colour that is lighter as a whole.</summary>
    LighterColor,

    /// <summary>Burn or dodge, by the layer's colour.</summary>
    VividLight,

    /// <summary>Linear burn or linear dodge, by the layer's colour.</summary>
    LinearLight,

    /// <summary>Darken or lighten, by the layer's colour.</summary>
    PinLight,

    /// <summary>Each channel fully on or off.</summary>
    HardMix,

    /// <summary>What is below less the layer.</summary>
    Subtract,

    /// <summary>What is below divided by the layer.</summary>
    Divide,

    /// <summary>A group that does not hold its layers apart from what is below it.</summary>
    PassThrough,

    /// <summary>A mode this version does not know; the file's own key is kept.</summary>
    Unknown,
}
