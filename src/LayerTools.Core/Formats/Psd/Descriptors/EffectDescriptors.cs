using LayerTools.Model.Effects;
using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Layer effects in descriptors (blocks <c>lfx2</c>, <c>lmfx</c>, <c>lfxs</c>).</summary>
internal static class EffectDescriptors
{
    /// <summary>The effects that are switched on, back to front. Order from memory, not from the published specification.</summary>
    /// <param name="root">The block's descriptor.</param>
    /// <param name="lightAngle">The angle of the file's light, degrees.</param>
    /// <param name="origin">Where patterns begin that are linked with the layer, canvas px.</param>
    public static IReadOnlyList<Effect> Read(Descriptor root, double lightAngle, (double Right, double Down) origin)
    {
        if (root.GetBool("masterFXSwitch") == false) return [];
        var effects = new List<Effect>();
        if (!root.IsComplete) effects.Add(new UndrawnEffect("layer effects with parts of unknown form"));
        Add("DrSh", "dropShadowMulti", effect => ReadShade(effect, lightAngle, isInward: false));
        Add("OrGl", null, effect => ReadHalo(effect, isInward: false));
        Add("patternFill", "patternFillMulti", effect => Over(effect, FillDescriptors.ReadPattern(effect, origin)));
        Add("GrFl", "gradientFillMulti", effect => Over(effect, GradientDescriptors.ReadFill(effect)));
        Add("SoFi", "solidFillMulti", effect => Over(effect, FillDescriptors.ReadColor(effect)));
        Add("ChFX", null, _ => new UndrawnEffect("layer effect: sheen inside"));
        Add("IrGl", null, effect => ReadHalo(effect, isInward: true));
        Add("IrSh", "innerShadowMulti", effect => ReadShade(effect, lightAngle, isInward: true));
        Add("FrFX", "frameFXMulti", effect => ReadOutline(effect, origin));
        Add("ebbl", null, _ => new UndrawnEffect("layer effect: relief"));
        return effects;

        // Of several of one kind the first lies on top.
        void Add(string key, string? listKey, Func<Descriptor, Effect> read)
        {
            var found = listKey is not null && root.Has(listKey) ? root.GetDescriptors(listKey) : root.GetDescriptor(key) is { } single ? [single] : [];
            effects.AddRange(found.Where(effect => effect.GetBool("enab") == true && effect.GetBool("present") != false).Reverse().Select(read));
        }
    }

    private static float ReadOpacity(Descriptor effect) => (float)Math.Max(0, Math.Min(1, (effect.GetNumber("Opct") ?? 100) / 100));

    private static FillEffect Over(Descriptor effect, Fill fill) => new(DescriptorBlendModes.Read(effect), ReadOpacity(effect), fill);

    private static Effect ReadOutline(Descriptor effect, (double Right, double Down) origin)
    {
        OutlinePlace? place = effect.GetEnum("Styl") switch { "InsF" => OutlinePlace.Inside, "CtrF" => OutlinePlace.Centre, "OutF" => OutlinePlace.Outside, _ => null };
        Fill? fill = effect.GetEnum("PntT") switch
        {
            "SClr" => FillDescriptors.ReadColor(effect),
            "GrFl" => GradientDescriptors.ReadFill(effect),
            "Ptrn" => FillDescriptors.ReadPattern(effect, origin),
            _ => null,
        };
        if (place is null || fill is null || effect.GetNumber("Sz  ") is not { } size) return new UndrawnEffect("layer effect: outline of unknown form");
        if (effect.GetBool("overprint") == true) return new UndrawnEffect("layer effect: outline that mixes with the layer below it");
        return new OutlineEffect(DescriptorBlendModes.Read(effect), ReadOpacity(effect), fill, place.Value, Math.Max(0, size));
    }

    private static Effect ReadShade(Descriptor effect, double lightAngle, bool isInward)
    {
        const string Name = "layer effect: shade";
        if (FindOddity(effect, "TrnS") is { } oddity) return new UndrawnEffect($"{Name} {oddity}");
        if (DescriptorColors.Read(effect.GetDescriptor("Clr ")) is not { } color) return new UndrawnEffect($"{Name} in a colour that cannot be told");
        var angle = (effect.GetBool("uglg") == true ? lightAngle : effect.GetNumber("lagl") ?? lightAngle) * Math.PI / 180;
        var distance = effect.GetNumber("Dstn") ?? 0;
        return new ShadeEffect(DescriptorBlendModes.Read(effect), ReadOpacity(effect), color)
        {
            IsInward = isInward,
            // The shade falls away from the light.
            Right = -distance * Math.Cos(angle),
            Down = distance * Math.Sin(angle),
            Size = Math.Max(0, effect.GetNumber("blur") ?? 0),
            Spread = ReadSpread(effect),
            IsHiddenByLayer = effect.GetBool("layerConceals") ?? true,
        };
    }

    private static Effect ReadHalo(Descriptor effect, bool isInward)
    {
        const string Name = "layer effect: halo";
        if (FindOddity(effect, "TrnS") is { } oddity) return new UndrawnEffect($"{Name} {oddity}");
        if (effect.Has("Grad")) return new UndrawnEffect($"{Name} in a gradient");
        if (effect.GetEnum("GlwT") is not (null or "SfBL")) return new UndrawnEffect($"{Name} that follows the edge exactly");
        if (DescriptorColors.Read(effect.GetDescriptor("Clr ")) is not { } color) return new UndrawnEffect($"{Name} in a colour that cannot be told");
        return new ShadeEffect(DescriptorBlendModes.Read(effect), ReadOpacity(effect), color)
        {
            IsInward = isInward,
            Size = Math.Max(0, effect.GetNumber("blur") ?? 0),
            Spread = ReadSpread(effect),
            IsHalo = true,
            Strength = 100 / Math.Max(1, effect.GetNumber("Inpr") ?? 50),
            IsFromCentre = effect.GetEnum("glwS") is "SrcC",
        };
    }

    private static double ReadSpread(Descriptor effect) => Math.Max(0, Math.Min(1, (effect.GetNumber("Ckmt") ?? 0) / 100));

    private static string? FindOddity(Descriptor effect, string curveKey)
    {
        if (effect.GetNumber("Nose") is not (null or 0)) return "with noise";
        if (effect.GetNumber("ShdN") is not (null or 0)) return "with noise";
        return effect.GetDescriptor(curveKey) is { } curve && !IsStraight(curve) ? "along a curve" : null;
    }

    /// <summary>Whether a curve says each value as it is: from 0, 0 to 255, 255.</summary>
    private static bool IsStraight(Descriptor curve) =>
        curve.GetDescriptors("Crv ").Select(point => (point.GetNumber("Hrzn"), point.GetNumber("Vrtc"))).SequenceEqual([(0.0, 0.0), (255.0, 255.0)]);
}
