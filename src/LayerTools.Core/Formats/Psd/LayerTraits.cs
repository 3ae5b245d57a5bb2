using System.Text;
using LayerTools.Formats.Psd.Blocks;
using LayerTools.Formats.Psd.Descriptors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Tells from a record's blocks what the layer is and what it uses.</summary>
internal static class LayerTraits
{
    private static readonly string[] TextKeys = ["TySh", "tySh"];
    private static readonly string[] PlacedKeys = ["SoLd", "SoLE", "PlLd", "plLd"];
    private static readonly string[] FillKeys = ["SoCo", "GdFl", "PtFl"];
    private const string StrokedFillKey = "vscg";
    private static readonly string[] ShapeOnlyKeys = [StrokedFillKey, "vstk", "vogk"];

    private static readonly string[] AdjustmentKeys =
    [
        "levl", "curv", "brit", "CgEd", "blnc", "hue ", "hue2", "selc", "thrs", "nvrt", "post", "mixr", "grdm", "phfl", "expA", "vibA", "blwh", "clrL",
    ];

    private static readonly string[] EffectKeys = ["lfx2", "lmfx", "lfxs"];
    private const string OldEffectKey = "lrFX";

    /// <summary>Data behind text, placed content, fills and shapes, which plain pixels do not have.</summary>
    public static IEnumerable<string> LiveContentKeys => [.. TextKeys, .. PlacedKeys, .. FillKeys, .. ShapeOnlyKeys, .. AdjustmentKeys];

    /// <summary>Data that says how a fill or an adjustment is drawn.</summary>
    public static IEnumerable<string> DrawnContentKeys => [.. FillKeys, .. AdjustmentKeys];

    /// <summary>What a layer of plain pixels keeps: names, ids, marks, locks, dividers, reference points and notes.</summary>
    public static IEnumerable<string> PlainKeys => ["luni", "lyid", "lclr", "lspf", "lnsr", "fxrp", "lsct", "lsdk", "shmd"];

    /// <summary>How a layer mixes with what lies below it, beyond mode and opacity.</summary>
    public static IEnumerable<string> BlendingKeys => ["iOpa", .. BackdropKeys];

    /// <summary>Rules that only mean something with a backdrop.</summary>
    public static IEnumerable<string> BackdropKeys => ["knko", "brst"];

    /// <summary>All blocks that hold layer effects.</summary>
    public static IEnumerable<string> AllEffectKeys => [.. EffectKeys, OldEffectKey];

    public static LayerKind TellKind(PsdRecord record)
    {
        if (TellDividerType(record) is DividerBlock.OpenGroup or DividerBlock.ClosedGroup) return LayerKind.Group;
        if (record.Has(TextKeys)) return LayerKind.Text;
        if (record.Has(PlacedKeys)) return LayerKind.Placed;
        if (record.Has(StrokedFillKey)) return LayerKind.Shape;
        if (record.Has(FillKeys)) return record.Has(VectorMaskBlock.Keys) || record.Has(ShapeOnlyKeys) ? LayerKind.Shape : LayerKind.Fill;
        return record.Has(AdjustmentKeys) ? LayerKind.Adjustment : LayerKind.Pixel;
    }

    public static int TellDividerType(PsdRecord record)
    {
        var type = DividerBlock.ReadType(record.GetData("lsct"));
        return type != 0 ? type : DividerBlock.ReadType(record.GetData("lsdk"));
    }

    public static LayerFeatures TellFeatures(PsdRecord record)
    {
        var features = LayerFeatures.None;
        foreach (var key in VectorMaskBlock.Keys)
        {
            if (record.Has(key) && !VectorMaskBlock.IsDisabled(record.GetData(key))) features |= LayerFeatures.VectorMask;
        }

        if (record.Has([.. FillKeys, StrokedFillKey, .. AdjustmentKeys])) features |= LayerFeatures.LiveContent;
        if (HasUnusualRanges(record.BlendingRanges)) features |= LayerFeatures.BlendingRanges;
        if (FirstByte(record, "knko") is not (null or 0)) features |= LayerFeatures.Knockout;
        if (FirstByte(record, "clbl") is 0) features |= LayerFeatures.ClippedApart;
        if (FirstByte(record, "infx") is not (null or 0)) features |= LayerFeatures.InteriorBlending;
        if (!record.GetData("brst").IsEmpty) features |= LayerFeatures.ChannelRestrictions;
        var stroke = record.GetData("vstk");
        if (HasTrue(stroke, "strokeEnabled") || HasFalse(stroke, "fillEnabled")) features |= LayerFeatures.PathStroke;
        if (record.Has(ArtboardDescriptors.Keys)) features |= LayerFeatures.Artboard;
        return features | TellEffects(record);
    }

    private static byte? FirstByte(PsdRecord record, string key) => record.GetData(key) is { IsEmpty: false } data ? data[0] : null;

    /// <summary>Ranges that let everything through are written as 0, 0, 255, 255 for source and destination of each channel.</summary>
    private static bool HasUnusualRanges(byte[] ranges)
    {
        for (var i = 0; i < ranges.Length; i++)
        {
            if (ranges[i] != ((i & 2) == 0 ? 0 : 255)) return true;
        }

        return false;
    }

    private static LayerFeatures TellEffects(PsdRecord record)
    {
        var key = Array.Find(EffectKeys, candidate => record.Has(candidate));
        if (key is null)
        {
            if (!record.Has(OldEffectKey)) return LayerFeatures.None;
            var old = record.GetData(OldEffectKey);
            return LayerFeatures.Effects | (Contains(old, "dsdw") || Contains(old, "isdw") || Contains(old, "bevl") ? LayerFeatures.DirectedEffects : LayerFeatures.None);
        }

        var data = record.GetData(key);
        // Too large for memory means too much to be nothing.
        if (data.IsEmpty) return LayerFeatures.Effects | LayerFeatures.DirectedEffects;
        if (HasFalse(data, "masterFXSwitch") || !HasTrue(data, "enab")) return LayerFeatures.None;
        var directed = Contains(data, "DrSh") || Contains(data, "IrSh") || Contains(data, "ebbl") || Contains(data, "GrFl");
        return LayerFeatures.Effects | (directed ? LayerFeatures.DirectedEffects : LayerFeatures.None);
    }

    private static bool HasTrue(ReadOnlySpan<byte> data, string key) => FindFlag(data, key, 1);

    private static bool HasFalse(ReadOnlySpan<byte> data, string key) => FindFlag(data, key, 0);

    private static bool FindFlag(ReadOnlySpan<byte> data, string key, byte value) => data.IndexOf([.. Encoding.ASCII.GetBytes(key + "bool"), value]) >= 0;

    private static bool Contains(ReadOnlySpan<byte> data, string key) => data.IndexOf(Encoding.ASCII.GetBytes(key)) >= 0;
}
