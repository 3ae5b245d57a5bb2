using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Checks.Rules;

/// <summary>Commands that make a part the reflection of its opposite.</summary>
internal static class Reflection
{
    /// <summary>Makes the missing opposite of a part or of all parts in a group.</summary>
    public static string Advise(Layer layer) => Remedy.Edit(layer, $"Copy-LayerMirror -From {Opposites.SideOf(layer)}");

    /// <summary>Makes the right part anew from the left one; which of them is as it should be only a person can tell.</summary>
    public static string Advise(PartPair pair) => Remedy.Edit(pair.Left.Layer, $"Copy-LayerMirror -From {nameof(Side.Left)} -Existing {nameof(Edits.MirrorExisting.Replace)}");
}
