namespace LayerTools.Names;

/// <summary>How sides are read and written.</summary>
public sealed record SideStyle
{
    /// <summary>Tokens that are read as left, besides those every file may use (see <see cref="SideName"/>).</summary>
    public IReadOnlyList<string> LeftTokens { get; init; } = [];

    /// <summary>Tokens that are read as right, likewise.</summary>
    public IReadOnlyList<string> RightTokens { get; init; } = [];

    /// <summary>What is written for left.</summary>
    public string Left { get; init; } = "L";

    /// <summary>What is written for right.</summary>
    public string Right { get; init; } = "R";

    /// <summary>Where it is written.</summary>
    public SidePlace Place { get; init; } = SidePlace.End;

    /// <summary>Whose left is meant.</summary>
    public SideOwner Owner { get; init; } = SideOwner.Character;
}
