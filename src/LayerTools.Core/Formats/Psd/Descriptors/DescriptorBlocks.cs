using System.Buffers.Binary;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>The fill and the effects that a record's blocks describe. What cannot be read becomes something that cannot be drawn, with the reason.</summary>
internal static class DescriptorBlocks
{
    private const int EffectsVersionLength = 4;
    private static readonly string[] EffectKeys = ["lfx2", "lmfx", "lfxs"];

    public static Fill? ReadFill(PsdRecord record)
    {
        var origin = ReadOrigin(record);
        foreach (var (key, read) in new (string, Func<Descriptor, Fill>)[]
                 {
                     ("SoCo", FillDescriptors.ReadColor),
                     ("GdFl", GradientDescriptors.ReadFill),
                     ("PtFl", descriptor => FillDescriptors.ReadPattern(descriptor, origin)),
                     ("vscg", descriptor => ReadShapeContent(descriptor, origin)),
                 })
        {
            if (record.Find(PsdKey.Parse(key)) is not { Data.Length: > 0 } block) continue;
            try
            {
                // vscg names the kind of fill before the version.
                return read(DescriptorReader.ReadVersioned(ReadAll(block), key == "vscg" ? 4 : 0, $"block '{key}'"));
            }
            catch (LayeredFileException error)
            {
                return new UndrawnFill($"fill that cannot be read ({error.Section}: {error.Problem})");
            }
        }

        return null;
    }

    public static IReadOnlyList<Effect> ReadEffects(PsdRecord record, PsdFileDetail file)
    {
        var key = Array.Find(EffectKeys, candidate => record.Has(candidate));
        try
        {
            if (key is not null) return EffectDescriptors.Read(DescriptorReader.ReadVersioned(ReadAll(record.Find(PsdKey.Parse(key))!), EffectsVersionLength, $"block '{key}'"), file.LightAngle, ReadOrigin(record));
            return record.Find(PsdKey.Parse(OldEffects.Key)) is { } block ? OldEffects.Read(ReadAll(block), file.LightAngle) : [];
        }
        catch (LayeredFileException error)
        {
            return [new UndrawnEffect($"layer effects that cannot be read ({error.Section}: {error.Problem})")];
        }
    }

    private static Fill ReadShapeContent(Descriptor descriptor, (double Right, double Down) origin)
    {
        if (descriptor.Has("Grad")) return GradientDescriptors.ReadFill(descriptor);
        return descriptor.Has("Ptrn") ? FillDescriptors.ReadPattern(descriptor, origin) : FillDescriptors.ReadColor(descriptor);
    }

    /// <summary>Where the layer counts patterns from, canvas px: two numbers of 8 bytes. (Observed in real files; the block is not in the published specification.)</summary>
    private static (double Right, double Down) ReadOrigin(PsdRecord record)
    {
        const int Length = 16;
        var data = record.GetData("fxrp");
        if (data.Length < Length) return (0, 0);
        var right = BitConverter.Int64BitsToDouble(BinaryPrimitives.ReadInt64BigEndian(data));
        var down = BitConverter.Int64BitsToDouble(BinaryPrimitives.ReadInt64BigEndian(data.Slice(Length / 2)));
        return Math.Abs(right) < int.MaxValue && Math.Abs(down) < int.MaxValue ? (right, down) : (0, 0);
    }

    private static byte[] ReadAll(PsdBlock block)
    {
        if (block.Data is MemoryBytes memory) return memory.Bytes;
        using var opened = new OpenedSources();
        return block.Data.ReadAll(opened);
    }
}
