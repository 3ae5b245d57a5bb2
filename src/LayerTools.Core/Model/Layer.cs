using LayerTools.Names;

namespace LayerTools.Model;

/// <summary>One layer or group of a layered file. Its properties are plain values, so that tables, CSV and JSON stay readable; its methods lead to other layers.</summary>
public sealed class Layer
{
    private readonly List<Layer> children = [];
    private string name;
    private SideName? sideName;

    internal Layer(LayerKind kind, string name, LayerDetail detail)
    {
        Kind = kind;
        this.name = name;
        Detail = detail;
    }

    /// <summary>The number the file identifies the layer by; null where the file has none.</summary>
    public int? Id { get; internal set; }

    /// <summary>The layer's name, any script, up to 255 UTF-16 units.</summary>
    public string Name
    {
        get => name;
        internal set
        {
            name = value;
            sideName = null;
        }
    }

    /// <summary>The names from the outermost group to this layer, joined by '/'; a '/' inside a name is written '\/'. Need not be unique.</summary>
    public string LayerPath => Parent is { IsRoot: false } ? $"{Parent.LayerPath}/{PathSegment}" : PathSegment;

    /// <summary>How many groups the layer lies in.</summary>
    public int Depth => Parent is null or { IsRoot: true } ? 0 : Parent.Depth + 1;

    /// <summary>Place in the flattened tree, 1 = front-most; a group comes right before its layers.</summary>
    public int LayerNumber { get; internal set; }

    /// <summary>What the layer is made of.</summary>
    public LayerKind Kind { get; internal set; }

    /// <summary>The side that the name says.</summary>
    public Side Side => (sideName ??= SideName.Parse(name)).Side;

    /// <summary>The name less its side token.</summary>
    public string BaseName => (sideName ??= SideName.Parse(name)).BaseName;

    /// <summary>First column of the layer's pixels, canvas px; of a group, of all its layers' pixels.</summary>
    public int Left => ContentBounds.Left;

    /// <summary>First row, canvas px.</summary>
    public int Top => ContentBounds.Top;

    /// <summary>Columns, px.</summary>
    public int Width => Math.Max(0, ContentBounds.Width);

    /// <summary>Rows, px.</summary>
    public int Height => Math.Max(0, ContentBounds.Height);

    /// <summary>Opacity, 0 to 100 %, rounded to a tenth.</summary>
    public double Opacity => Math.Round(OpacityByte * 100.0 / 255, 1);

    /// <summary>How the layer's colours mix with what lies below.</summary>
    public BlendMode BlendMode { get; internal set; }

    /// <summary>Whether the layer itself is switched on.</summary>
    public bool Visible { get; internal set; } = true;

    /// <summary>Whether the layer and all groups around it are switched on.</summary>
    public bool EffectivelyVisible => Visible && (Parent is null or { IsRoot: true } || Parent.EffectivelyVisible);

    /// <summary>Whether the layer shows only where the layer it is clipped to does.</summary>
    public bool Clipped { get; internal set; }

    /// <summary>Whether the layer has a user mask or a vector mask.</summary>
    public bool HasMask => Mask is not null || (Detail.Features & LayerFeatures.VectorMask) != 0;

    /// <summary>Whether anything of the layer is locked.</summary>
    public bool Locked { get; internal set; }

    /// <summary>The layer's colour mark.</summary>
    public Mark Mark { get; internal set; }

    /// <summary>The file the layer belongs to.</summary>
    public string FilePath => File?.Path ?? string.Empty;

    /// <summary>The file the layer belongs to.</summary>
    public LayerFile? GetFile() => File;

    /// <summary>The group around the layer, or null at the outermost level.</summary>
    public Layer? GetParent() => Parent is { IsRoot: false } ? Parent : null;

    /// <summary>The layers directly in this group, front to back.</summary>
    public IReadOnlyList<Layer> GetChildren() => children;

    /// <summary>All layers in this group, front to back, each group right before its layers.</summary>
    public IEnumerable<Layer> GetLayers()
    {
        foreach (var child in children)
        {
            yield return child;
            foreach (var deeper in child.GetLayers()) yield return deeper;
        }
    }

    /// <inheritdoc/>
    public override string ToString() => LayerPath;

    internal static Layer CreateRoot(LayerFile file, LayerDetail detail) => new(LayerKind.Group, string.Empty, detail) { IsRoot = true, File = file };

    internal bool IsRoot { get; private set; }

    internal LayerFile? File { get; private set; }

    internal Layer? Parent { get; private set; }

    internal LayerDetail Detail { get; set; }

    /// <summary>The stored rectangle of the layer's own channels.</summary>
    internal Bounds Bounds { get; set; }

    /// <summary>0 to 255, as stored.</summary>
    internal byte OpacityByte { get; set; } = 255;

    /// <summary>Opacity of the layer without its effects, 0 to 255.</summary>
    internal byte FillOpacity { get; set; } = 255;

    /// <summary>Which things are locked, as the file stores it.</summary>
    internal uint LockFlags { get; set; }

    internal LayerMask? Mask { get; set; }

    internal List<Plane> Planes { get; set; } = [];

    internal bool IsGroup => Kind == LayerKind.Group;

    /// <summary>The layer's rectangle, or the union of a group's.</summary>
    internal Bounds ContentBounds => IsGroup ? children.Aggregate(Bounds.Empty, (all, child) => all.Union(child.ContentBounds)) : Bounds;

    internal string PathSegment => name.Replace("/", "\\/");

    internal Plane? FindPlane(PlaneRole role) => Planes.Find(plane => plane.Role == role);

    /// <summary>Whether any colour of the layer's own is stored; live content can do without.</summary>
    internal bool HasStoredPixels => !Bounds.IsEmpty && Planes.Exists(plane => plane.Role >= PlaneRole.Color0 && plane.StoredLength > 2);

    /// <summary>The rectangle that a channel's samples fill.</summary>
    internal Bounds GetPlaneBounds(PlaneRole role) => role switch
    {
        PlaneRole.UserMask => Mask?.Bounds ?? Bounds.Empty,
        PlaneRole.PaintedMask => Mask?.PaintedBounds ?? Mask?.Bounds ?? Bounds.Empty,
        _ => Bounds,
    };

    internal int IndexInParent => Parent!.children.IndexOf(this);

    internal void Insert(int index, Layer child)
    {
        child.Parent = this;
        children.Insert(index, child);
        child.AttachTo(File);
    }

    internal void Append(Layer child) => Insert(children.Count, child);

    internal void Detach()
    {
        Parent!.children.Remove(this);
        Parent = null;
        AttachTo(null);
    }

    private void AttachTo(LayerFile? file)
    {
        File = file;
        foreach (var child in children) child.AttachTo(file);
    }
}
