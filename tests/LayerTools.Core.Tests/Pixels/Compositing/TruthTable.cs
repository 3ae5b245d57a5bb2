using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Tests.Support;

namespace LayerTools.Tests.Pixels.Compositing;

/// <summary>
/// Every RGB or grey file with layers among the real ones whose stored picture is real. Each is copied with a stored picture of even
/// magenta (in grey files an even grey), so that the stored one cannot be handed back, drawn from the copy's layers and compared with the original.
/// </summary>
internal static class TruthTable
{
    private const ushort MergedIsReal = 1057;
    private static readonly byte[] Magenta = [255, 0, 255];

    public static List<TruthRow> Measure()
    {
        using var folder = new TemporaryFolder();
        return [.. SharedFiles.FindLayered("corpus").Select(TryRead).OfType<LayerFile>().Where(IsComparable).Select(file => Measure(file, folder))];
    }

    private static TruthRow Measure(LayerFile original, TemporaryFolder folder)
    {
        var copy = folder["copy" + Path.GetExtension(original.Path)];
        Overwrite(original, copy);
        var file = LayerFiles.Read(copy);
        var drawn = MergedPictureComparer.Draw(file);
        var stored = MergedPictureComparer.ReadStored(original);
        var sum = 0L;
        var max = 0;
        var near = 0;
        for (var pixel = 0; pixel < drawn.Length; pixel += 3)
        {
            var largest = 0;
            for (var i = pixel; i < pixel + 3; i++)
            {
                var difference = Math.Abs(drawn[i] - stored[i]);
                sum += difference;
                largest = Math.Max(largest, difference);
            }

            max = Math.Max(max, largest);
            if (largest <= TruthRow.NearDifference) near++;
        }

        var name = original.Path[(original.Path.LastIndexOf("corpus", StringComparison.Ordinal) + 7)..];
        return new TruthRow(name, sum / (double)drawn.Length, max, near / (drawn.Length / 3.0), CompositorSupport.FindNotDrawn(file), DescribeUses(file), TruthReasons.Find(file));
    }

    private static LayerFile? TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayeredFileException)
        {
            return null;
        }
    }

    /// <summary>The fifth byte of the resource says whether the picture is real (PSD File Formats Specification, 'Version Info'); files without it are taken at their word.</summary>
    private static bool IsComparable(LayerFile file)
    {
        if (file.ColorMode is not (ColorMode.Rgb or ColorMode.Grayscale) || file.BitDepth is not (8 or 16 or 32) || file.LayerCount == 0) return false;
        using var opened = new OpenedSources();
        return ((PsdFileDetail)file.Detail).Find(MergedIsReal)?.Data.ReadAll(opened) is not { } data || data[4] != 0;
    }

    private static void Overwrite(LayerFile original, string copy)
    {
        var detail = (PsdFileDetail)original.Detail;
        var bytes = File.ReadAllBytes(original.Path);
        using var output = File.Create(copy);
        output.Write(bytes, 0, (int)(bytes.Length - detail.MergedPicture.Length));
        output.Write([0, 0]);
        var plane = new byte[detail.Header.Width * detail.Header.Height * detail.Header.Depth / 8];
        for (var channel = 0; channel < detail.Header.Channels; channel++)
        {
            Array.Fill(plane, Magenta[channel % 3]);
            output.Write(plane);
        }
    }

    private static string DescribeUses(LayerFile file)
    {
        var layers = file.GetLayers().Where(layer => layer.EffectivelyVisible).ToList();
        var kinds = layers.Select(layer => layer.Kind.ToString()).Where(kind => kind is not ("Pixel" or "Group"));
        var modes = layers.Select(layer => layer.BlendMode.ToString()).Where(mode => mode is not ("Normal" or "PassThrough"));
        var features = layers.Select(layer => layer.Detail.Features).Aggregate(LayerFeatures.None, (all, some) => all | some);
        IEnumerable<string> others =
        [
            file.ColorMode == ColorMode.Grayscale ? "Grey" : "",
            file.BitDepth != 8 ? FormattableString.Invariant($"{file.BitDepth}bit") : "",
            layers.Exists(layer => layer.Mask is { IsDisabled: false }) ? "Mask" : "",
            layers.Exists(layer => layer.Mask is { IsDisabled: false, HasSoftening: true }) ? "Softened" : "",
            layers.Exists(layer => layer.Clipped) ? "Clipped" : "",
            layers.Exists(layer => layer.FillOpacity < 255) ? "FillOpacity" : "",
            features == LayerFeatures.None ? "" : features.ToString().Replace(", ", " "),
        ];
        return string.Join(" ", kinds.Concat(modes).Concat(others).Where(use => use.Length > 0).Distinct());
    }
}
