using LayerTools.Errors;

namespace LayerTools.Sheets;

/// <summary>A sheet that cannot be made or written. The message says what is missing and what to do.</summary>
public sealed class SheetException : LayeredFileException
{
    /// <summary>An error about a sheet.</summary>
    /// <param name="kind">What went wrong.</param>
    /// <param name="path">The sheet's path, or null while it is not known.</param>
    /// <param name="problem">What is wrong, as a sentence.</param>
    /// <param name="remedy">What to do about it, as a sentence.</param>
    /// <param name="inner">The error below, if any.</param>
    public SheetException(LayeredFileErrorKind kind, string? path, string problem, string remedy, Exception? inner = null)
        : base(kind, path, "contact sheet", -1, problem, remedy, inner)
    {
    }

    internal static SheetException Refuse(string? path, string problem, string remedy) => new(LayeredFileErrorKind.NotSupported, path, problem, remedy);
}
