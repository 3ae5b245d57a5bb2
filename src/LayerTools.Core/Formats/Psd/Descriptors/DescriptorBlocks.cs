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

    public static Fill? ReadFill(PsdRecord record, PsdFileDetail file)
    {
                foreach (var (key, read) in new (string, Func<Descriptor, Fill>)[]
                 {
                     ("SoCo", descriptor => FillDescriptors.ReadColor(descriptor)),
                     ("GdFl", descriptor => GradientDescriptors.ReadFill(descriptor)),
                     ("PtFl", FillDescriptors.ReadPattern),
                     ("vscg", descriptor => ReadShapeContent(descriptor)),
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
            if (key is not null) return EffectDescriptors.Read(DescriptorReader.ReadVersioned(ReadAll(record.Find(PsdKey.Parse(key))!), EffectsVersionLength, $"block '{key}'"), file.LightAngle);
            return record.Find(PsdKey.Parse(OldEffects.Key)) is { } block ? OldEffects.Read(ReadAll(block), file.LightAngle) : [];
        }
        catch (LayeredFileException error)
        {
            return [new UndrawnEffect($"layer effects that cannot be read ({error.Section}: {error.Problem})")];
        }
    }

    private static Fill ReadShapeContent(Descriptor descriptor)
    {
        if (descriptor.Has("Grad")) return GradientDescriptors.ReadFill(descriptor);
        return descriptor.Has("Ptrn") ? FillDescriptors.ReadPattern(descriptor) : FillDescriptors.ReadColor(descriptor);
    }

    private static byte[] ReadAll(PsdBlock block)
    {
        if (block.Data is MemoryBytes memory) return memory.Bytes;
        using var opened = new OpenedSources();
        return block.Data.ReadAll(opened);
    }
}
