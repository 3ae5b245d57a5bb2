using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Measures.Survey;

/// <summary>How much the coverage of all parts of a file may take, so that a damaged file that claims huge layers is refused and not tried. Can be used from several threads.</summary>
internal sealed class SurveyMemory(LayerFile file, ReadLimits limits)
{
    private readonly long most = ((long)limits.MemoryMegabytes << 20) / sizeof(ulong);
    private long taken;

    /// <summary>Counts words as taken.</summary>
    /// <exception cref="LayeredFileException">There are too many.</exception>
    public void Take(long words)
    {
        if (Interlocked.Add(ref taken, words) > most) throw Refuse(FormattableString.Invariant($"The limit is {limits.MemoryMegabytes} MB."), null);
    }

    /// <summary>Makes what was counted.</summary>
    /// <exception cref="LayeredFileException">The machine has no memory for it.</exception>
    public T Allocate<T>(Func<T> create)
    {
        try
        {
            return create();
        }
        catch (OutOfMemoryException error)
        {
            throw Refuse("The machine has no memory left for it.", error);
        }
    }

    private LayeredFileException Refuse(string why, Exception? inner) =>
        new(LayeredFileErrorKind.LimitExceeded, file.Path, "layers", -1, $"The painted areas of its layers are too large to be compared. {why}",
            FormattableString.Invariant($"Raise {nameof(ReadLimits.MemoryMegabytes)} (at most 2047), or cut the layers."), inner);
}
