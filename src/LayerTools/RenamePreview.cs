using LayerTools.Edits;
using LayerTools.Model;

namespace LayerTools;

/// <summary>A rename that was asked about and not made. Rows with these columns serve as a map for Rename-Layer.</summary>
public class RenamePreview
{
    internal RenamePreview(EditStep step, string filePath)
        : this(step.Layer!, step.New, filePath)
    {
    }

    private protected RenamePreview(Layer layer, string? newName, string filePath)
    {
        LayerNumber = layer.LayerNumber;
        Id = layer.Id;
        LayerPath = layer.LayerPath;
        Old = layer.Name;
        New = newName;
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
