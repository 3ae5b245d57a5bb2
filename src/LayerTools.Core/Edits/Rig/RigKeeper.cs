using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing.Blending;

namespace LayerTools.Edits.Rig;

/// <summary>Makes the layers of a baked file that need no drawing: those that are plain already, those that stay as they are, and the frames of baked ones.</summary>
internal sealed class RigKeeper(LayerFile file, LayerFile target, PixelReader reader, bool isConverted)
{
    private const int ColorCount = 3;
    private const int FloatBytes = 4;
    private const int ExponentHigh = 0x7F;
    private const int ExponentLow = 0x80;
    private readonly Dictionary<Layer, bool> badNumbers = [];

    /// <summary>Whether a layer's blending depends on what lies below it in ways that pixels cannot.</summary>
    public static bool HasBackdropRules(Layer layer) => (layer.Detail.Features & (LayerFeatures.BlendingRanges | LayerFeatures.Knockout | LayerFeatures.ChannelRestrictions)) != 0;

    /// <summary>Whether a layer is nothing but pixels in a rectangle that fits them.</summary>
    /// <param name="layer">A layer of a file of RGB with 8 bits.</param>
    /// <param name="margin">Transparent pixels around what is painted.</param>
    public bool IsPlain(Layer layer, int margin)
    {
        const LayerFeatures Harmless = LayerFeatures.BlendingRanges | LayerFeatures.Knockout | LayerFeatures.ChannelRestrictions;
        var isPixels = layer is { Kind: LayerKind.Pixel, Mask: null, FillOpacity: byte.MaxValue, BlendMode: not BlendMode.Dissolve } && layer.Detail.VectorPath is null && (layer.Detail.Features & ~Harmless) == 0;
        if (!isPixels || layer.Planes.Count != ColorCount + 1 || layer.FindPlane(PlaneRole.Alpha) is null || layer.Bounds.IsEmpty) return false;
        var painted = FindPainted(layer);
        return !painted.IsEmpty && new Bounds(painted.Left - margin, painted.Top - margin, painted.Right + margin, painted.Bottom + margin) == layer.Bounds;
    }

    /// <summary>A plain layer, its stored channels untouched.</summary>
    public static Layer CopyPlain(RigEntry entry)
    {
        if (HasBackdropRules(entry.Source)) entry.NotBaked.Add("rules of blending with what lies below");
        return RigClones.Copy(entry.Source);
    }

    /// <summary>A layer that stays as it is, as far as the file's new colours allow.</summary>
    public Layer CopyAsIs(Layer layer)
    {
        var copy = RigClones.Copy(layer);
        if (isConverted) Convert(layer, copy);
        return copy;
    }

    /// <summary>The layer that a part becomes, still without pixels; notes what is baked and what is not.</summary>
    public static Layer CreatePart(Layer layer, RigEntry entry, IReadOnlyList<Layer> merged, RigContext context)
    {
        var keepsFill = layer.FillOpacity < byte.MaxValue && !Blenders.FillActsAsOpacity(layer.BlendMode);
        var keepsRules = HasBackdropRules(layer);
        entry.Baked.AddRange(Describe(layer, merged, context, keepsFill));
        if (keepsFill) entry.NotBaked.Add($"fill opacity in blend mode {layer.BlendMode}");
        if (keepsRules) entry.NotBaked.Add("rules of blending with what lies below");
        var part = new Layer(LayerKind.Pixel, layer.Name, layer.Detail.ToPlain(keepsFill || keepsRules))
        {
            Id = layer.Id,
            BlendMode = layer.BlendMode,
            Visible = layer.Visible,
            Locked = layer.Locked,
            LockFlags = layer.LockFlags,
            Mark = layer.Mark,
            OpacityByte = layer.OpacityByte,
            FillOpacity = keepsFill ? layer.FillOpacity : byte.MaxValue,
        };
        if (layer.BlendMode != BlendMode.Dissolve) return part;
        part.BlendMode = BlendMode.Normal;
        part.OpacityByte = byte.MaxValue;
        return part;
    }

    /// <summary>Turns the channels of a layer that stays as it is to 8 bits and RGB.</summary>
    public void Convert(Layer layer, Layer copy)
    {
        if (layer.IsGroup) copy.Detail = copy.Detail.ForColorsOf(target.Detail);
        copy.Planes = [.. layer.Planes.Where(plane => plane.Role < PlaneRole.Color0).Select(plane => ToBytes(layer, plane))];
        var colors = layer.Planes.Exists(plane => plane.Role >= PlaneRole.Color0) && !layer.Bounds.IsEmpty ? new RigColors(layer, reader) : null;
        for (var color = 0; color < ColorCount; color++) copy.Planes.Add(colors?.Pack(color, file.Format, target.Spool) ?? new Plane(PlaneRole.Color0 + color, (int)Compression.Raw, MemoryBytes.Empty));
    }

    /// <summary>Whether a floating-point layer holds values that are no numbers or infinite.</summary>
    public bool HasBadNumbers(Layer layer)
    {
        if (file.BitDepth != 32 || layer.IsGroup) return false;
        if (!badNumbers.TryGetValue(layer, out var found)) badNumbers[layer] = found = layer.Planes.Where(plane => plane.Role >= PlaneRole.Alpha).Any(plane => HasBadNumbers(layer, plane));
        return found;
    }

    private static IEnumerable<string> Describe(Layer layer, IReadOnlyList<Layer> merged, RigContext context, bool keepsFill)
    {
        if (layer.Kind != LayerKind.Pixel) yield return $"{layer.Kind.ToString().ToLowerInvariant()} to pixels";
        if (layer.HasMask || layer.Detail.VectorPath is not null) yield return RigClones.HasActiveMask(layer) ? "mask" : "mask that was switched off";
        foreach (var group in context.MaskedGroups) yield return $"mask of the group '{group.LayerPath}'";
        if (layer.Detail.Features.HasFlag(LayerFeatures.Effects)) yield return "effects";
        if (layer.FillOpacity < byte.MaxValue && !keepsFill) yield return "fill opacity";
        if (layer.BlendMode == BlendMode.Dissolve) yield return "blend mode Dissolve";
        if (merged.Count > 0) yield return FormattableString.Invariant($"{merged.Count} clipped: {string.Join(", ", merged.Select(part => $"'{part.Name}'"))}");
    }

    private Plane ToBytes(Layer layer, Plane plane)
    {
        var bounds = layer.GetPlaneBounds(plane.Role);
        if (bounds.IsEmpty || plane.StoredLength <= 2) return plane;
        using var rows = reader.OpenRows(layer, plane);
        var stored = new byte[rows.RowBytes];
        return PlanePacker.Pack(plane.Role, Compression.PackBits, rows.Width, rows.Height, 8, file.Format, Read, target.Spool);

        void Read(int y, Span<byte> row)
        {
            rows.ReadRow(stored);
            SampleConverter.ToBytes(stored, row, file.BitDepth, isLight: false);
        }
    }

    private Bounds FindPainted(Layer layer)
    {
        using var rows = reader.OpenRows(layer, PlaneRole.Alpha)!;
        var row = new byte[rows.RowBytes];
        var painted = Bounds.Empty;
        for (var y = layer.Bounds.Top; y < layer.Bounds.Bottom; y++)
        {
            rows.ReadRow(row);
            var first = Array.FindIndex(row, value => value != 0);
            if (first >= 0) painted = painted.Union(new Bounds(layer.Bounds.Left + first, y, layer.Bounds.Left + Array.FindLastIndex(row, value => value != 0) + 1, y + 1));
        }

        return painted;
    }

    private bool HasBadNumbers(Layer layer, Plane plane)
    {
        if (layer.Bounds.IsEmpty) return false;
        using var rows = reader.OpenRows(layer, plane);
        var row = new byte[rows.RowBytes];
        for (var y = 0; y < rows.Height; y++)
        {
            rows.ReadRow(row);
            for (var i = 0; i < row.Length; i += FloatBytes)
            {
                if ((row[i] & ExponentHigh) == ExponentHigh && (row[i + 1] & ExponentLow) != 0) return true;
            }
        }

        return false;
    }
}
