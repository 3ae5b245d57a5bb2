namespace LayerTools.Model;

/// <summary>A layered file: facts, the layer tree and the edits that wait to be saved. Holds no open file.</summary>
public sealed class LayerFile
{
    private readonly List<Change> changes = [];

    internal LayerFile(string path, FileFormat format, int width, int height, ColorMode colorMode, int bitDepth, FileDetail detail)
    {
        Path = path;
        Format = format;
        Width = width;
        Height = height;
        ColorMode = colorMode;
        BitDepth = bitDepth;
        Detail = detail;
        Root = Layer.CreateRoot(this, detail.CreateLayerDetail(LayerKind.Group));
    }

    /// <summary>Full path of the file.</summary>
    public string Path { get; internal set; }

    /// <summary>File name with its extension.</summary>
    public string Name => System.IO.Path.GetFileName(Path);

    /// <summary>Which of the formats it is, by content.</summary>
    public FileFormat Format { get; }

    /// <summary>Canvas columns, px.</summary>
    public int Width { get; internal set; }

    /// <summary>Canvas rows, px.</summary>
    public int Height { get; internal set; }

    /// <summary>Resolution, pixels per inch; null where the file does not say.</summary>
    public double? Ppi { get; internal set; }

    /// <summary>How channels make colours.</summary>
    public ColorMode ColorMode { get; internal set; }

    /// <summary>Bits of one sample: 1, 8, 16 or 32.</summary>
    public int BitDepth { get; internal set; }

    /// <summary>x of the centre line, px: half the width, a line and not a pixel column; ends in .5 for an odd width.</summary>
    public double Axis => Width / 2.0;

    /// <summary>The guide lines.</summary>
    public IReadOnlyList<Guide> Guides { get; internal set; } = [];

    /// <summary>Layers and groups in the tree.</summary>
    public int LayerCount { get; private set; }

    /// <summary>Edits that no save has written yet.</summary>
    public int PendingCount => changes.Count(change => !change.Saved);

    /// <summary>All edits since the file was read, oldest first.</summary>
    public IReadOnlyList<Change> Changes => changes;

    /// <summary>What was odd about the file without keeping it from being read.</summary>
    public IReadOnlyList<string> Warnings { get; internal set; } = [];

    /// <summary>All layers, front to back, each group right before its layers.</summary>
    public IEnumerable<Layer> GetLayers() => Root.GetLayers();

    /// <summary>The outermost layers, front to back.</summary>
    public IReadOnlyList<Layer> GetChildren() => Root.GetChildren();

    /// <inheritdoc/>
    public override string ToString() => Path;

    internal Layer Root { get; }

    internal FileDetail Detail { get; set; }

    /// <summary>The bytes on disk that the model stands for; null for a file that was never saved.</summary>
    internal SourceFile? Source { get; set; }

    /// <summary>Where edits keep newly packed channels until a save.</summary>
    internal SpoolFile Spool { get; private set; } = new();

    /// <summary>Whether an edit that the file on disk does not have changes what it looks like.</summary>
    internal bool IsPictureStale { get; set; }

    /// <summary>Whether there are edits that the file on disk does not have, be they saved elsewhere.</summary>
    internal bool IsAheadOfSource { get; private set; }

    internal void Record(Change change)
    {
        changes.Add(change);
        IsAheadOfSource = true;
    }

    /// <summary>Notes that a save has written all edits.</summary>
    /// <param name="inSource">Whether it wrote them to the file that the model stands for.</param>
    internal void MarkSaved(bool inSource)
    {
        foreach (var change in changes) change.Saved = true;
        if (!inSource) return;
        IsAheadOfSource = false;
        IsPictureStale = false;
    }

    /// <summary>Gives up what edits kept, once every layer points into a file instead.</summary>
    internal void EmptySpool()
    {
        Spool.Dispose();
        Spool = new SpoolFile();
    }

    /// <summary>Numbers the layers anew after the tree changed.</summary>
    internal void Renumber()
    {
        var number = 0;
        foreach (var layer in GetLayers()) layer.LayerNumber = ++number;
        LayerCount = number;
    }

    /// <summary>An id that nothing in the file has.</summary>
    internal int CreateId() => new IdSource(this).Next();
}
