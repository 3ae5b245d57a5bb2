using LayerTools.Errors;
using LayerTools.Measures.Cover;
using LayerTools.Names;

namespace LayerTools.Images;

/// <summary>Writes pictures of seams that would open, so that the numbers can be believed.</summary>
public static class SeamPictures
{
    /// <summary>
    /// Writes one PNG for each seam of which a stretch would open, around the place where it is least deep: 320 × 320 canvas px, each twice as large. What is seen of the part is blue, what
    /// of it is painted on underneath the neighbour dark blue, and what others hide pale blue; the rest of the neighbour is sand, and all else white. Pixels of the seam that
    /// would open are thick and red, those painted on far enough green, and the ends that do not count grey. Either all files are written or none.
    /// </summary>
    /// <param name="cover">What was measured.</param>
    /// <param name="folder">Where the pictures go; made if missing. They are called after part and neighbour.</param>
    /// <param name="overwrite">Whether files that exist are overwritten.</param>
    /// <param name="cancellation">Stops; then nothing is written.</param>
    /// <returns>The paths, in the order of the seams.</returns>
    /// <exception cref="LayeredFileException">A file exists or cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<string> Write(FigureCover cover, string folder, bool overwrite, CancellationToken cancellation = default)
    {
        var seams = cover.Seams.Where(seam => seam.ShallowLength > 0).ToList();
        using var target = new ImageFolder(seams.Select(seam => Path.Combine(Path.GetFullPath(folder), NameOf(cover, seam))), overwrite);
        for (var i = 0; i < seams.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            var drawing = new SeamDrawing(cover, seams[i], cancellation);
            target.Write(i, drawing.Save);
        }

        return target.Commit();
    }

    /// <summary>Numbers first: they keep the stack's order and make each name one of a kind, also where a long one is cut.</summary>
    private static string NameOf(FigureCover cover, SeamCover seam) => FileNames.MakeSafe(FormattableString.Invariant(
        $"{seam.LayerNumber} under {seam.NeighbourNumber} - {NameOf(cover, seam.LayerNumber)} - {NameOf(cover, seam.NeighbourNumber)}")) + ".png";

    private static string NameOf(FigureCover cover, int number) => cover.Stack.First(part => part.Layer.LayerNumber == number).Layer.Name;
}
