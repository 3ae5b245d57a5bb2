using System.Buffers.Binary;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>Small files of even colours, and what the compositor makes of them. Lists are front to back; invented data.</summary>
internal static class Picture
{
    public static LayerFile Grey(int width, int height, params Layer[] layers) => Create(ColorMode.Grayscale, 8, width, height, layers);

    public static LayerFile Create(ColorMode mode, int bitDepth, int width, int height, params Layer[] layers)
    {
        var file = new LayerFile("figure.psd", FileFormat.Psd, width, height, mode, bitDepth, new StubFileDetail());
        foreach (var layer in layers) file.Root.Append(layer);
        file.Renumber();
        return file;
    }

    /// <summary>A grey layer, 8 bit; without <paramref name="alpha"/> it has no alpha channel.</summary>
    public static Layer Even(string name, Bounds bounds, byte grey, byte? alpha = null)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = bounds };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Color0, Repeat(grey, bounds)));
        if (alpha is { } value) layer.Planes.Add(ModelBuilder.Raw(PlaneRole.Alpha, Repeat(value, bounds)));
        return layer;
    }

    public static Layer Group(string name, BlendMode mode, params Layer[] children)
    {
        var group = ModelBuilder.Group(name, children);
        group.BlendMode = mode;
        return group;
    }

    public static Layer With(this Layer layer, Action<Layer> change)
    {
        change(layer);
        return layer;
    }

    public static Layer Masked(this Layer layer, Bounds bounds, byte value, byte outside = 0, Action<LayerMask>? change = null)
    {
        layer.Mask = new LayerMask { Bounds = bounds, DefaultColor = outside };
        layer.Planes.Add(ModelBuilder.Raw(PlaneRole.UserMask, Repeat(value, bounds)));
        change?.Invoke(layer.Mask);
        return layer;
    }

    /// <summary>A vector mask: a box over all rows, from column to column of a canvas.</summary>
    public static Layer Cut(this Layer layer, double left, double right, int width = 4, bool isDisabled = false)
    {
        PathKnot Corner(double x, double y) => new(x / width, y, x / width, y, x / width, y);
        var outline = new PathOutline(PathOperation.Unite, [Corner(left, 0), Corner(right, 0), Corner(right, 1), Corner(left, 1)]);
        ((StubLayerDetail)layer.Detail).Path = new VectorPath([outline], IsFilledWhenEmpty: false, IsInverted: false, isDisabled);
        return layer;
    }

    public static Layer Ruled(this Layer layer, Knockout knockout, BlendingRange? range = null, int[]? excluded = null)
    {
        ((StubLayerDetail)layer.Detail).Rules = new BlendingRules { Knockout = knockout, Ranges = range is null ? [] : [range], ExcludedChannels = excluded ?? [] };
        return layer;
    }

    /// <summary>The merged picture's channels, as whole numbers in the file's depth, rows from the top.</summary>
    public static int[][] Render(LayerFile file, bool withAlpha = false, CompositeOptions? options = null)
    {
        using var reader = new PixelReader(file);
        List<int>[]? channels = null;
        new Compositor(file, reader, options).Render(withAlpha, band =>
        {
            channels ??= [.. Enumerable.Range(0, band.ChannelCount).Select(_ => new List<int>())];
            for (var channel = 0; channel < channels.Length; channel++) channels[channel].AddRange(Read(band.GetRows(channel), file.BitDepth));
        });
        return [.. channels!.Select(channel => channel.ToArray())];
    }

    public static int[] RenderGrey(LayerFile file, CompositeOptions? options = null) => Render(file, withAlpha: false, options)[0];

    private static byte[] Repeat(byte value, Bounds bounds) => [.. Enumerable.Repeat(value, (int)bounds.Area)];

    private static int[] Read(ReadOnlySpan<byte> samples, int bitDepth)
    {
        var values = new int[samples.Length / (bitDepth / 8)];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = bitDepth switch
            {
                8 => samples[i],
                16 => BinaryPrimitives.ReadUInt16BigEndian(samples[(2 * i)..]),
                _ => BinaryPrimitives.ReadInt32BigEndian(samples[(4 * i)..]),
            };
        }

        return values;
    }
}
