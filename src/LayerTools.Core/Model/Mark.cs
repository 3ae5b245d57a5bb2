namespace LayerTools.Model;

/// <summary>The colour mark a layer carries in the layer list. Numbers are those the files store ('lclr' block); files may hold numbers without a name here, which are kept.</summary>
public enum Mark
{
    /// <summary>No mark.</summary>
    None = 0,

    /// <summary>Red.</summary>
    Red = 1,

    /// <summary>Orange.</summary>
    Orange = 2,

    /// <summary>Yellow.</summary>
    Yellow = 3,

    /// <summary>Green.</summary>
    Green = 4,

    /// <summary>Blue.</summary>
    Blue = 5,

    /// <summary>Violet.</summary>
    Violet = 6,

    /// <summary>Gray.</summary>
    Gray = 7,
}
