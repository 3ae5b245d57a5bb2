namespace LayerTools.Model;

/// <summary>What a layer uses beyond plain pixels, opacity, blend mode, mask and clipping.</summary>
[Flags]
public enum LayerFeatures
{
    /// <summary>Nothing more.</summary>
    None = 0,

    /// <summary>A mask made of paths.</summary>
    VectorMask = 1,

    /// <summary>Layer effects that are switched on.</summary>
    Effects = 2,

    /// <summary>Effects that have a direction, such as a shadow's angle.</summary>
    DirectedEffects = 4,

    /// <summary>Blending limited to ranges of brightness.</summary>
    BlendingRanges = 8,

    /// <summary>Cuts through what lies below.</summary>
    Knockout = 16,

    /// <summary>Clipped layers blend one by one instead of together with their base.</summary>
    ClippedApart = 32,

    /// <summary>A fill or text whose look is data, not pixels.</summary>
    LiveContent = 64,

    /// <summary>Channels that blending leaves alone.</summary>
    ChannelRestrictions = 128,

    /// <summary>Effects that are blended with the inside of the layer before its blend mode is used.</summary>
    InteriorBlending = 256,

    /// <summary>A group with a sheet of its own: it cuts its layers off at the edges and may have a colour behind them.</summary>
    Artboard = 512,

    /// <summary>A shape whose path is stroked, or not filled.</summary>
    PathStroke = 1024,
}
