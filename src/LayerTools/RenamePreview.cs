using LayerTools.Edits;

namespace LayerTools;

/// <summary>A rename that was asked about and not made. Rows with these columns serve as a map for Rename-Layer.</summary>
public sealed class RenamePreview
{
    internal RenamePreview(EditStep step, string filePath)
    {
        LayerNumber = step.Layer!.LayerNumber;
        Id = step.Layer.Id;
        LayerPath = step.LayerPath;
        Old = step.Old;
        New = step.New;
        FilePath = filePath;
    }

    /// <summary>The layer's number in the flattened tree, 1 = front-most.</summary>
    public int LayerNumber { get; }

    /// <summary>The layer's id, where the file has one.</summary>
    public int? Id { get; }

    /// <summary>The layer's path before the rename.</summary>
    public string LayerPath { get; }

    /// <summary>The name now.</summary>
    public string? Old { get; }

    /// <summary>The name it would get.</summary>
    public string? New { get; }

    /// <summary>The file the layer belongs to.</summary>
    public string FilePath { get; }
}
