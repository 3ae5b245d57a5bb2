using System.Text.RegularExpressions;
using LayerTools.Errors;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Edits.Rig;

/// <summary>
/// Turns a file into plain parts for a rig: pixels of 8-bit RGB with alpha, opacity, and a blend mode; no masks, clipping, effects or live content. All of the work is done
/// when the edit is planned, in a model of its own, and proved by comparing the pictures before and after; applying the plan only puts the result in place.
/// The chosen layers do not matter: a file is baked as a whole.
/// </summary>
public sealed class RigEdit : LayerEdit
{
    private const string Edit = "Baking";

    /// <summary>What becomes of clipped layers.</summary>
    public RigClipping Clipping { get; init; } = RigClipping.Merge;

    /// <summary>Layers and groups to keep although their names say that they are no parts; null for none. Goes before all else.</summary>
    public Func<Layer, bool>? Keep { get; init; }

    /// <summary>Layers and groups to leave out besides; null for none.</summary>
    public Func<Layer, bool>? Drop { get; init; }

    /// <summary>Whether hidden layers and groups are left out; otherwise they stay, still hidden.</summary>
    public bool DropHidden { get; init; }

    /// <summary>The names of backdrops, sketches and guides.</summary>
    public StatusOptions Roles { get; init; } = new();

    /// <summary>The largest difference between the pictures before and after that is accepted, in steps of 1/255.</summary>
    public double Tolerance { get; init; } = 2;

    /// <summary>Whether the file is baked although the pictures differ by more.</summary>
    public bool AcceptDifference { get; init; }

    /// <summary>Stops the work.</summary>
    public CancellationToken Cancellation { get; init; }

    /// <summary>What the last plan does with each layer, front to back.</summary>
    public IReadOnlyList<RigPart> Parts { get; private set; } = [];

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        Check(file);
        var selection = Select(file);
        using var baker = new RigBaker(file, this, selection);
        baker.Bake();
        var proof = new RigProof(file, selection, baker.Target, Cancellation);
        var difference = proof.Compare();
        var entries = baker.Entries.ToList();
        Parts = [.. entries.Select(entry => Describe(file, entry, difference))];
        var warnings = FindWarnings(entries).ToList();
        if (baker.IsConverted && file.Detail.ExtraChannelCount is > 0 and var extra) warnings.Add(FormattableString.Invariant($"The file's colours or depth change; {extra} channels beside colours and transparency are left out."));
        if (difference.Largest > Tolerance)
        {
            var names = string.Join(", ", proof.FindResponsible(difference, entries, Tolerance).Select(entry => $"'{entry.Source.LayerPath}'"));
            var sentence = FormattableString.Invariant($"the picture would differ by up to {difference.Largest}/255 (on average {difference.Mean:0.####}/255), more than {Tolerance}/255; it comes from {(names.Length > 0 ? names : "no single part")}");
            if (!AcceptDifference) throw Refusal.Create(file, Edit, sentence, "Look at these parts where the file was made, or accept it with -AcceptDifference.");
            warnings.Add($"Accepted: {sentence}.");
        }

        var steps = RigSteps.List(file, baker, entries, difference).ToList();
        return new EditPlan(file, steps, changesPicture: true, () => RigSteps.Apply(file, baker.Target, entries)) { Warnings = warnings };
    }

    private static void Check(LayerFile file)
    {
        if (file.LayerCount == 0) throw Refusal.Create(file, Edit, "the file has no layers", "Cut the picture into parts first.");
        CompositorSupport.EnsureColors(file);
    }

    private RigSelection Select(LayerFile file)
    {
        try
        {
            var selection = new RigSelection(file, this);
            if (file.GetLayers().All(layer => layer.IsGroup)) throw Refusal.Create(file, Edit, "the file has groups and no layers", "Draw parts first.");
            if (file.GetLayers().Any(layer => !layer.IsGroup && !selection.IsLeftOut(layer))) return selection;
            throw Refusal.Create(file, Edit, "every layer would be left out", "Name those that are parts with -Keep.");
        }
        catch (RegexMatchTimeoutException error)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, "layers", -1, $"The pattern '{error.Pattern}' took too long.", "Make it simpler.", error);
        }
    }

    private static RigPart Describe(LayerFile file, RigEntry entry, RigDifference difference)
    {
        var bounds = entry.Target?.ContentBounds ?? Bounds.Empty;
        return new RigPart
        {
            FilePath = file.Path,
            LayerPath = entry.Source.LayerPath,
            LayerNumber = entry.Source.LayerNumber,
            Name = entry.Target?.Name ?? string.Empty,
            Kind = entry.Source.Kind,
            Outcome = entry.Outcome,
            Baked = string.Join("; ", entry.Baked),
            NotBaked = string.Join("; ", entry.NotBaked),
            Left = bounds.Left,
            Top = bounds.Top,
            Width = bounds.Width,
            Height = bounds.Height,
            Difference = difference.FindLargest(bounds),
            FileDifference = difference.Largest,
            FileMeanDifference = Math.Round(difference.Mean, 6),
        };
    }

    private static IEnumerable<string> FindWarnings(IReadOnlyList<RigEntry> entries)
    {
        foreach (var group in entries.Where(entry => entry.Outcome != RigOutcome.Dropped && entry.NotBaked.Count > 0).GroupBy(entry => string.Join("; ", entry.NotBaked), StringComparer.Ordinal))
        {
            yield return $"Not baked: {group.Key}: {string.Join(", ", group.Select(entry => $"'{entry.Source.LayerPath}'"))}.";
        }
    }
}
