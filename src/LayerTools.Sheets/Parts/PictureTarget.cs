using LayerTools.Model;

namespace LayerTools.Sheets.Parts;

/// <summary>A picture to be drawn.</summary>
/// <param name="Frame">The rectangle it shows, canvas px; not empty.</param>
/// <param name="Width">Columns, px, 1 to the frame's.</param>
/// <param name="Height">Rows, px, 1 to the frame's.</param>
internal sealed record PictureTarget(Bounds Frame, int Width, int Height);
