using LayerTools.Names;

namespace LayerTools.Errors;

/// <summary>A layered file that cannot be read, edited or written. The message names file, place and remedy.</summary>
public class LayeredFileException : Exception
{
    /// <summary>An error at a place in a file.</summary>
    /// <param name="kind">What went wrong.</param>
    /// <param name="path">The file, or null while it is not known.</param>
    /// <param name="section">The part of the file, in words.</param>
    /// <param name="offset">Bytes from the start of the file; -1 where no place applies.</param>
    /// <param name="problem">What is wrong, as a sentence.</param>
    /// <param name="remedy">What to do about it, as a sentence.</param>
    /// <param name="inner">The error below, if any.</param>
    public LayeredFileException(LayeredFileErrorKind kind, string? path, string section, long offset, string problem, string remedy, Exception? inner = null)
        : base(Describe(path, section, offset, problem, remedy), inner)
    {
        Kind = kind;
        Path = path;
        Section = section;
        Offset = offset;
        Problem = problem;
        Remedy = remedy;
    }

    /// <summary>What went wrong.</summary>
    public LayeredFileErrorKind Kind { get; }

    /// <summary>The file.</summary>
    public string? Path { get; }

    /// <summary>The part of the file, in words.</summary>
    public string Section { get; }

    /// <summary>Bytes from the start of the file, or -1.</summary>
    public long Offset { get; }

    /// <summary>What is wrong, as a sentence.</summary>
    public string Problem { get; }

    /// <summary>What to do about it, as a sentence.</summary>
    public string Remedy { get; }

    /// <summary>The same error told about a file, for places that did not know it.</summary>
    public LayeredFileException In(string path) => Path is not null ? this : new LayeredFileException(Kind, path, Section, Offset, Problem, Remedy, InnerException);

    private static string Describe(string? path, string section, long offset, string problem, string remedy)
    {
        var place = offset < 0 ? section : FormattableString.Invariant($"{section}, byte {offset}");
        return PrintableText.Of(string.Join(" ", new[] { path is null ? $"{place}:" : $"{path}: {place}:", problem, remedy }.Where(part => part.Length > 0)));
    }
}
