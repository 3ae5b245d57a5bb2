using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Binding;

/// <summary>Files with their chosen layers that wait for each other, because the names in one count on those in the others.</summary>
internal sealed class HeldFiles
{
    private readonly Dictionary<LayerFile, IReadOnlyList<Layer>> files = [];

    /// <summary>The files, in the order they came.</summary>
    public IReadOnlyList<LayerFile> Files => [.. files.Keys];

    /// <summary>The chosen layers of a file.</summary>
    public IReadOnlyList<Layer> LayersOf(LayerFile file) => files[file];

    /// <summary>Whether the layer is of one of the files.</summary>
    public bool HasFileOf(Layer layer) => layer.GetFile() is { } file && files.ContainsKey(file);

    /// <summary>Holds a file; the one that came last counts.</summary>
    public void Add(LayerFile file, IReadOnlyList<Layer> layers) => files[file] = layers;

    /// <summary>The edit that names all of them alike.</summary>
    public NormalizeEdit NameAlike(NamingStyle style) => NormalizeEdit.Consistent(style, [.. files.Values]);
}
