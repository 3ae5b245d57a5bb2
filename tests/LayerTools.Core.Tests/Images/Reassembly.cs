using System.Text.Json;
using LayerTools.Model;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace LayerTools.Tests.Images;

/// <summary>Puts a figure together from its pictures and its manifest, with ImageSharp alone, as somebody would who has nothing else.</summary>
internal sealed class Reassembly(string folder)
{
    private readonly JsonElement manifest = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "layers.json"))).RootElement;

    /// <summary>Whether ImageSharp knows all blend modes that are shown.</summary>
    public bool IsPossible => Shown(manifest.GetProperty("layers").EnumerateArray()).All(layer => GetMode(layer) is not null || GetText(layer, "blendMode") == nameof(BlendMode.PassThrough));

    public Image<RgbaVector> Draw()
    {
        var canvas = new Image<RgbaVector>(manifest.GetProperty("width").GetInt32(), manifest.GetProperty("height").GetInt32());
        DrawGroup(canvas, group: null);
        return canvas;
    }

    private static IEnumerable<JsonElement> Shown(IEnumerable<JsonElement> layers) => layers.Where(layer => layer.GetProperty("shown").GetBoolean());

    private static string? GetText(JsonElement layer, string name) => layer.GetProperty(name).GetString();

    private static int GetNumber(JsonElement layer, string name) => layer.GetProperty(name).GetInt32();

    private static float GetOpacity(JsonElement layer) => (float)(layer.GetProperty("opacity").GetDouble() * layer.GetProperty("fillOpacity").GetDouble() / 10_000);

    private static PixelColorBlendingMode? GetMode(JsonElement layer) => GetText(layer, "blendMode") switch
    {
        nameof(BlendMode.Normal) => PixelColorBlendingMode.Normal,
        nameof(BlendMode.Multiply) => PixelColorBlendingMode.Multiply,
        nameof(BlendMode.Screen) => PixelColorBlendingMode.Screen,
        nameof(BlendMode.Darken) => PixelColorBlendingMode.Darken,
        nameof(BlendMode.Lighten) => PixelColorBlendingMode.Lighten,
        nameof(BlendMode.Overlay) => PixelColorBlendingMode.Overlay,
        nameof(BlendMode.HardLight) => PixelColorBlendingMode.HardLight,
        nameof(BlendMode.LinearDodge) => PixelColorBlendingMode.Add,
        _ => null,
    };

    /// <summary>Back to front; a layer first gets what is clipped to it.</summary>
    private void DrawGroup(Image<RgbaVector> below, int? group)
    {
        var layers = manifest.GetProperty("layers").EnumerateArray().Where(layer => (layer.GetProperty("group") is { ValueKind: JsonValueKind.Number } number ? number.GetInt32() : (int?)null) == group).Reverse().ToList();
        for (var i = 0; i < layers.Count; i++)
        {
            var clipped = layers.Skip(i + 1).TakeWhile(layer => layer.GetProperty("clipped").GetBoolean()).ToList();
            DrawRun(below, layers[i], Shown(clipped));
            i += clipped.Count;
        }
    }

    private void DrawRun(Image<RgbaVector> below, JsonElement layer, IEnumerable<JsonElement> clipped)
    {
        if (!layer.GetProperty("shown").GetBoolean()) return;
        if (GetText(layer, "blendMode") == nameof(BlendMode.PassThrough))
        {
            DrawGroup(below, GetNumber(layer, "order"));
            return;
        }

        using var own = DrawAlone(layer, below.Size());
        foreach (var front in clipped)
        {
            using var cut = DrawAlone(front, below.Size());
            Join(own, cut, front, PixelAlphaCompositionMode.SrcAtop);
        }

        Join(below, own, layer, PixelAlphaCompositionMode.SrcOver);
    }

    private static void Join(Image<RgbaVector> below, Image<RgbaVector> picture, JsonElement layer, PixelAlphaCompositionMode alpha) =>
        below.Mutate(context => context.DrawImage(picture, GetMode(layer)!.Value, alpha, GetOpacity(layer)));

    private Image<RgbaVector> DrawAlone(JsonElement layer, Size size)
    {
        var alone = new Image<RgbaVector>(size.Width, size.Height);
        if (GetText(layer, "kind") == nameof(LayerKind.Group)) DrawGroup(alone, GetNumber(layer, "order"));
        else if (GetText(layer, "image") is { } image) Place(alone, image, GetNumber(layer, "left"), GetNumber(layer, "top"));
        return alone;
    }

    /// <summary>Pixel by pixel, since what lies outside the canvas has to be left out on all sides.</summary>
    private void Place(Image<RgbaVector> canvas, string name, int left, int top)
    {
        using var picture = Image.Load<RgbaVector>(Path.Combine(folder, name));
        for (var y = Math.Max(0, -top); y < picture.Height && top + y < canvas.Height; y++)
        {
            for (var x = Math.Max(0, -left); x < picture.Width && left + x < canvas.Width; x++) canvas[left + x, top + y] = picture[x, y];
        }
    }
}
