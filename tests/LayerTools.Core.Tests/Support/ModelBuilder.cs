using LayerTools.Model;
using LayerTools.Pixels;

namespace LayerTools.Tests.Support;

/// <summary>Builds models by hand. Lists are front to back; layers get ids 1, 2, 3 ... in that order.</summary>
internal static class ModelBuilder
{
    public static LayerFile File(params Layer[] layers) => File("figure.psd", 100, 60, layers);

    public static LayerFile File(string path, int width, int height, params Layer[] layers)
    {
        var format = path.EndsWith(".psb", StringComparison.Ordinal) ? FileFormat.Psb : FileFormat.Psd;
        var file = new LayerFile(path, format, width, height, ColorMode.Rgb, 8, new StubFileDetail());
        foreach (var layer in layers) file.Root.Append(layer);
        var id = 0;
        foreach (var layer in file.GetLayers()) layer.Id = ++id;
        file.Renumber();
        return file;
    }

    /// <summary>A layer of pixels: 8-bit RGB and alpha, stored raw. Without <paramref name="alpha"/> every pixel is opaque.</summary>
    public static Layer Pixel(string name, Bounds? bounds = null, byte[]? alpha = null, bool clipped = false, Mark mark = Mark.None)
    {
        var area = bounds ?? new Bounds(10, 10, 14, 12);
        var samples = area.Width * area.Height;
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = area, Clipped = clipped, Mark = mark };
        layer.Planes.Add(Raw(PlaneRole.Alpha, alpha ?? Enumerable.Repeat((byte)255, samples).ToArray()));
        for (var role = PlaneRole.Color0; role <= PlaneRole.Color2; role++)
        {
            layer.Planes.Add(Raw(role, [.. Enumerable.Range(0, samples).Select(i => (byte)(i * 7 + (int)role * 50))]));
        }

        return layer;
    }

    public static Layer Clipped(string name) => Pixel(name, clipped: true);

    public static Layer Group(string name, params Layer[] children)
    {
        var group = new Layer(LayerKind.Group, name, new StubLayerDetail()) { BlendMode = BlendMode.PassThrough };
        foreach (var child in children) group.Append(child);
        return group;
    }

    /// <summary>A layer of another kind, without pixels.</summary>
    public static Layer Other(LayerKind kind, string name) => new(kind, name, new StubLayerDetail());

    public static Plane Raw(PlaneRole role, byte[] samples) => new(role, (int)Compression.Raw, new MemoryBytes(samples));

    public static Layer Find(this LayerFile file, string path) => file.GetLayers().First(layer => layer.LayerPath == path);

    /// <summary>The tree in one line, front to back: <c>Group(Child Child*) Layer</c>; a star marks a clipped layer.</summary>
    public static string Sketch(this LayerFile file) => Sketch(file.GetChildren());

    private static string Sketch(IReadOnlyList<Layer> layers) => string.Join(" ", layers.Select(layer =>
        layer.Name.Replace(' ', '_') + (layer.Clipped ? "*" : "") + (layer.Kind == LayerKind.Group ? $"({Sketch(layer.GetChildren())})" : "")));
}
