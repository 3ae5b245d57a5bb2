namespace LayerTools.Model;

/// <summary>What a channel of a layer is for. Numbers are the channel ids that files store; 0 and above are colours.</summary>
public enum PlaneRole
{
    /// <summary>The mask painted by hand, where <see cref="UserMask"/> was rendered from it and a vector mask.</summary>
    PaintedMask = -3,

    /// <summary>The mask that counts: painted by hand or, with the mask's flag 8, the painted mask and the vector mask rendered together.</summary>
    UserMask = -2,

    /// <summary>Opacity of each pixel.</summary>
    Alpha = -1,

    /// <summary>The first colour: red, or grey.</summary>
    Color0 = 0,

    /// <summary>The second colour: green.</summary>
    Color1 = 1,

    /// <summary>The third colour: blue.</summary>
    Color2 = 2,

    /// <summary>The fourth colour: black, of CMYK.</summary>
    Color3 = 3,
}
