using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Sheets.Parts;

/// <summary>What a cell is about: a layer or group, a whole file, or the place of a part that is missing.</summary>
/// <param name="File">The file.</param>
/// <param name="Layer">The layer or group; null for the whole file. Where a part is missing, its opposite.</param>
/// <param name="Bounds">Its rectangle, canvas px; empty if there is nothing to draw.</param>
/// <param name="Progress">How far it is.</param>
/// <param name="Role">What it is for.</param>
/// <param name="MissingSide">The side on which a part is missing; None if none is.</param>
/// <param name="Problem">Why it cannot be drawn, as a sentence; null if it can.</param>
internal sealed record SheetSubject(LayerFile File, Layer? Layer, Bounds Bounds, PartProgress Progress, LayerRole Role = LayerRole.Part, Side MissingSide = Side.None, string? Problem = null)
{
    public bool IsMissing => MissingSide != Side.None;

    public static SheetSubject ForPart(Layer part, ProgressReader progress) => new(part.GetFile()!, part, part.Bounds, progress.Read(part), progress.GetRole(part));

    public static SheetSubject ForFile(LayerFile file) =>
        new(file, null, new Bounds(0, 0, file.Width, file.Height), new ProgressReader(file).Read(SheetParts.Select(file.GetLayers())));

    /// <summary>The place where the opposite of a part should be.</summary>
    public static SheetSubject ForMissing(Layer opposite, Side side) => new(opposite.GetFile()!, opposite, Bounds.Empty, PartProgress.NotCounted, MissingSide: side);
}
