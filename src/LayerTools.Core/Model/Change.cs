namespace LayerTools.Model;

/// <summary>One edit of one layer, or of the file itself where <see cref="LayerNumber"/> is 0.</summary>
public sealed class Change
{
    internal Change(int layerNumber, int? id, string layerPath, string property, string? old, string? @new)
    {
        LayerNumber = layerNumber;
        Id = id;
        LayerPath = layerPath;
        Property = property;
        Old = old;
        New = @new;
    }

    /// <summary>The layer's number in the flattened tree when it was edited, 1 = front-most; 0 for the file itself.</summary>
    public int LayerNumber { get; }

    /// <summary>The layer's id, where the file has one.</summary>
    public int? Id { get; }

    /// <summary>The layer's path before the edit.</summary>
    public string LayerPath { get; }

    /// <summary>What was changed, for example Name.</summary>
    public string Property { get; }

    /// <summary>The value before; empty for an added layer.</summary>
    public string? Old { get; }

    /// <summary>The value after; empty for a removed layer.</summary>
    public string? New { get; }

    /// <summary>Whether a save has written it.</summary>
    public bool Saved { get; internal set; }

    /// <inheritdoc/>
    public override string ToString() => $"{(LayerPath.Length == 0 ? "file" : LayerPath)}: {Property} '{Old}' -> '{New}'";
}
