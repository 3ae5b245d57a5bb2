using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>Compares two deliveries of a file, pending edits included. Marks do not count: a ledger keeps those.</summary>
public static class DeliveryComparer
{
    /// <summary>Compares two files.</summary>
    /// <param name="old">The delivery before.</param>
    /// <param name="new">The delivery of now.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="LayeredFileException">A channel that has to be looked at is damaged, or a file changed on disk.</exception>
    public static DeliveryComparison Compare(LayerFile old, LayerFile @new, CancellationToken cancellation = default)
    {
        using var oldContents = new ContentCache(old, cancellation);
        using var newContents = new ContentCache(@new, cancellation);
        using var stored = new StoredContent(old, @new);
        var matches = new LayerMatcher(oldContents, newContents, stored, cancellation).Match();
        return new FileDifferences(oldContents, newContents, stored, matches, cancellation).Find();
    }

    /// <summary>The layers of a file and those of an older delivery that they were.</summary>
    /// <exception cref="LayeredFileException">A channel that has to be looked at is damaged, or a file changed on disk.</exception>
    internal static IReadOnlyList<LayerMatch> Match(LayerFile old, LayerFile @new, CancellationToken cancellation = default)
    {
        using var oldContents = new ContentCache(old, cancellation);
        using var newContents = new ContentCache(@new, cancellation);
        using var stored = new StoredContent(old, @new);
        return new LayerMatcher(oldContents, newContents, stored, cancellation).Match();
    }
}
