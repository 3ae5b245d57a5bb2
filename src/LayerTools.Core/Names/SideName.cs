namespace LayerTools.Names;

/// <summary>A layer name taken apart into the token that says the side and the rest.</summary>
public sealed class SideName
{
    private SideName(Side side, string baseName)
    {
        Side = side;
        BaseName = baseName;
    }

    /// <summary>The side the name says.</summary>
    public Side Side { get; }

    /// <summary>The name less its side token and the delimiter that went with it.</summary>
    public string BaseName { get; }

    /// <summary>Takes a name apart.</summary>
    public static SideName Parse(string name) => new(Side.None, name);
}
