using LayerTools.Checks.Rules;
using LayerTools.Model;

namespace LayerTools.Edits.Repair;

/// <summary>Puts the centre guide onto the centre line, or draws one there.</summary>
internal static class CenterGuideRepair
{
    /// <summary>Moves the guide that is meant to be the centre guide.</summary>
    /// <param name="work">The file.</param>
    /// <param name="limit">How far it may be from the centre line, per cent of the width.</param>
    public static void Move(RepairWork work, double limit)
    {
        var file = work.File;
        if (GuideOffAxis.FindGuide(file, limit) is not { } guide) return;
        var moved = guide with { Position = file.Axis };
        work.Add(new EditStep(null, nameof(Guide), guide.ToString(), moved.ToString()), () => file.Guides = [.. file.Guides.Select(other => other == guide ? moved : other)]);
    }

    /// <summary>Adds a guide on the centre line.</summary>
    public static void Draw(RepairWork work)
    {
        var file = work.File;
        var guide = new Guide(file.Axis, IsVertical: true);
        work.Add(new EditStep(null, nameof(Guide), null, guide.ToString()), () => file.Guides = [.. file.Guides, guide]);
    }
}
