using LayerTools.Measures;
using LayerTools.Model;

namespace LayerTools.Checks.Rules;

/// <summary>The back of hair or clothing in front of the body.</summary>
internal sealed class BackPartInFront : CheckRule
{
    public override string Id => nameof(BackPartInFront);

    public override string Title => "A back part lies in front of the body";

    public override string Reason => "The back of hair and clothing, and what is carried on the back, lie behind the body, or they cover it (common practice). Asked over the whole stack, whatever groups the parts are in; the body is head, face, neck, torso and hip.";

    public override Severity DefaultSeverity => Severity.Error;

    private static readonly string[] BackZones = ["hair-back", "clothing-back", "back", "prop-back"];

    private static readonly string[] BodyZones = ["head", "face", "neck", "torso", "hip"];

    internal override IEnumerable<Finding> Check(CheckContext context)
    {
        // Front to back, so that the body parts that a layer covers are still to come.
        var parts = context.File.GetLayers().Where(layer => !layer.IsGroup && context.RoleOf(layer) == LayerRole.Part).Select(layer => (Layer: layer, Zone: ZoneOf(context, layer))).ToList();
        var lastBody = parts.FindLastIndex(part => Array.IndexOf(BodyZones, part.Zone) >= 0);
        for (var i = 0; i < lastBody; i++)
        {
            if (Array.IndexOf(BackZones, parts[i].Zone) < 0) continue;
            yield return Find(context, parts[i].Layer, $"The layer belongs behind the body, but lies in front of '{parts[lastBody].Layer.LayerPath}'.",
                Remedy.Edit(parts[i].Layer, $"Move-Layer -After {Target(parts[lastBody].Layer)}"));
        }
    }

    private static string ZoneOf(CheckContext context, Layer layer) => context.NameOf(layer).SureZone ?? string.Empty;

    /// <summary>Moving behind a body part goes behind the group it is in, so that the part joins no group it does not belong to.</summary>
    private static string Target(Layer body)
    {
        var outermost = body;
        while (outermost.GetParent() is { } group) outermost = group;
        return Quoted.Of(outermost.LayerPath);
    }
}
