using LayerTools.Errors;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;
using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Patterns;

/// <summary>The patterns that a file holds in its global blocks (PSD File Formats Specification, 'Patterns').</summary>
internal static class PatternBlocks
{
    private const string Section = "patterns";
    private const long LargestArea = 1 << 26;
    private const int LengthFill = 4;
    private static readonly uint[] Keys = [PsdKey.Parse("Patt"), PsdKey.Parse("Pat2"), PsdKey.Parse("Pat3")];

    /// <summary>The pattern of that id; null where there is none or its samples cannot be used.</summary>
    public static Pattern? Find(IEnumerable<PsdBlock> blocks, string id)
    {
        using var opened = new OpenedSources();
        foreach (var block in blocks.Where(block => Keys.Contains(block.Key) && block.Data.Length is > 0 and <= int.MaxValue))
        {
            try
            {
                if (Find(block.Data.ReadAll(opened), id) is { } pattern) return pattern;
            }
            catch (LayeredFileException error) when (error.Kind is LayeredFileErrorKind.Damaged)
            {
                // A damaged block holds no pattern to be found; the fill that wants it is then reported as not drawn.
                continue;
            }
        }

        return null;
    }

    /// <summary>Each pattern: length 4, the pattern, filling to a multiple of 4.</summary>
    private static Pattern? Find(byte[] data, string id)
    {
        var list = new DescriptorInput(data, 0, Section);
        while (list.Remaining >= LengthFill)
        {
            var bytes = list.ReadBytes();
            list.Skip(Math.Min(list.Remaining, (LengthFill - (bytes.Length % LengthFill)) % LengthFill));
            if (TryRead(new DescriptorInput(bytes, 0, Section), id) is { } found) return found;
        }

        return null;
    }

    /// <summary>version 4, colour mode 4, height 2, width 2, name, id (Pascal string), palette of 768 and 4 bytes if indexed, then the planes.</summary>
    private static Pattern? TryRead(DescriptorInput input, string id)
    {
        input.ReadInt32();
        var mode = (ColorMode)input.ReadInt32();
        input.Skip(4);
        input.ReadText();
        if (input.ReadPascal() != id || mode is not (ColorMode.Rgb or ColorMode.Grayscale)) return null;

        // version 4, length 4, top 4, left 4, bottom 4, right 4, highest channel count 4; then two planes more than that: masks
        input.Skip(8);
        var (top, left, bottom, right) = (input.ReadInt32(), input.ReadInt32(), input.ReadInt32(), input.ReadInt32());
        if (left < 0 || top < 0 || right <= left || bottom <= top || (long)right * bottom > LargestArea) return null;
        var count = input.ReadCount(4);
        var planes = new PatternPlane?[Math.Min(count, 24) + 2];
        for (var i = 0; i < planes.Length && input.Remaining >= 4; i++) planes[i] = PatternPlane.TryRead(input);

        var colors = new List<float[]>();
        for (var channel = 0; channel < (mode == ColorMode.Rgb ? 3 : 1); channel++)
        {
            if (planes[channel] is not { } plane || plane.Width != right - left || plane.Height != bottom - top) return null;
            colors.Add(plane.Decode(input));
        }

        var mask = planes[planes.Length - 1] ?? planes[planes.Length - 2];
        return new Pattern(right - left, bottom - top, colors, mask is not null && mask.Width == right - left && mask.Height == bottom - top ? mask.Decode(input) : null);
    }
}
