namespace LayerTools.Measures;

/// <summary>What a layer is for, as its name or the name of a group around it says.</summary>
public enum LayerRole
{
    /// <summary>A part of the figure.</summary>
    Part,

    /// <summary>What lies behind the figure.</summary>
    Backdrop,

    /// <summary>A drawing that was made on the way.</summary>
    Sketch,

    /// <summary>Lines or pictures to work by.</summary>
    Guide,
}
