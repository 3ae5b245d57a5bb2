namespace LayerTools.Measures;

/// <summary>What statuses are summed up by.</summary>
public enum StatusGrouping
{
    /// <summary>One sum for each file.</summary>
    File,

    /// <summary>One sum for each path of a group, that is for the layers directly in it.</summary>
    Group,

    /// <summary>Left, right and central parts.</summary>
    Side,

    /// <summary>One sum for each mark.</summary>
    Mark,
}
