using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Pixels;

/// <summary>Where a channel stands, for the messages of errors in it.</summary>
/// <param name="Path">The file; null if it is not known.</param>
/// <param name="Section">The layer and the channel, in words.</param>
/// <param name="Offset">Bytes from the start of the file to the channel's packed bytes; -1 for bytes that are in no file yet.</param>
internal sealed record PlanePlace(string? Path, string Section, long Offset)
{
    public static PlanePlace Of(Layer layer, Plane plane) =>
        new(layer.File?.Path, $"layer '{layer.LayerPath}', {Name(plane.Role)}", plane.Data is FileSlice slice ? slice.Offset : -1);

    /// <summary>Bytes that contradict what was announced.</summary>
    /// <param name="position">Bytes from the start of the channel's packed bytes.</param>
    /// <param name="problem">What is wrong, as a sentence.</param>
    /// <param name="inner">The error below, if any.</param>
    public LayeredFileException Damaged(long position, string problem, Exception? inner = null) =>
        new(LayeredFileErrorKind.Damaged, Path, Section, Offset < 0 ? -1 : Offset + position, problem,
            "Restore the file from a backup, or redraw the layer in it.", inner);

    public LayeredFileException NotSupported(string problem) =>
        new(LayeredFileErrorKind.NotSupported, Path, Section, Offset, problem, "Save the file with another compression in the program that wrote it.");

    private static string Name(PlaneRole role) => role switch
    {
        PlaneRole.PaintedMask => "painted mask",
        PlaneRole.UserMask => "user mask",
        PlaneRole.Alpha => "alpha channel",
        _ => FormattableString.Invariant($"colour channel {(int)role}"),
    };
}
