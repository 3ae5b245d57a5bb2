namespace LayerTools.Deliveries;

/// <summary>What happened to a layer between two deliveries.</summary>
[Flags]
public enum LayerChange
{
    /// <summary>Nothing.</summary>
    Same = 0,

    /// <summary>It is not in the new file.</summary>
    Removed = 1,

    /// <summary>It is only in the new file.</summary>
    Added = 2,

    /// <summary>It has another name.</summary>
    Renamed = 4,

    /// <summary>It lies in another group.</summary>
    Regrouped = 8,

    /// <summary>It lies before or behind other layers of its group.</summary>
    Restacked = 16,

    /// <summary>Its pixels lie elsewhere on the canvas.</summary>
    Moved = 32,

    /// <summary>Its pixels are the old ones, made larger or smaller.</summary>
    Resized = 64,

    /// <summary>It shows other pixels, or is filled or adjusts otherwise.</summary>
    Repainted = 128,

    /// <summary>A mask came, went or is another one.</summary>
    Masked = 256,

    /// <summary>Blend mode, opacity, clipping or effects are others.</summary>
    Reblended = 512,

    /// <summary>It was switched on or off.</summary>
    Switched = 1024,

    /// <summary>It is made of something else, as text that became pixels.</summary>
    Converted = 2048,
}
