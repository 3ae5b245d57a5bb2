using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Sinks;

namespace LayerTools.Edits.Rig;

/// <summary>Compares the picture of a file, without the layers that are left out, with that of what it was baked to.</summary>
internal sealed class RigProof(LayerFile before, RigSelection selection, LayerFile after, CancellationToken cancellation = default)
{
    private const int MostSuspects = 24;

    /// <summary>Draws both pictures and compares them band by band; the first waits in a temporary file.</summary>
    public RigDifference Compare() => Compare(new Bounds(0, 0, before.Width, before.Height), hiddenBefore: null, hiddenAfter: null);

    /// <summary>
    /// The parts that a difference comes from: without them there is none, or a smaller one, where they are. Where that cannot be told apart, all baked parts in the place.
    /// </summary>
    /// <param name="difference">The difference of the whole canvas.</param>
    /// <param name="entries">All layers.</param>
    /// <param name="tolerance">What may differ, in steps of 1/255.</param>
    public IReadOnlyList<RigEntry> FindResponsible(RigDifference difference, IEnumerable<RigEntry> entries, double tolerance)
    {
        var suspects = entries
            .Where(entry => entry is { Outcome: RigOutcome.Baked, Target: { IsGroup: false, EffectivelyVisible: true } } && difference.FindLargest(entry.Target.Bounds) > tolerance)
            .OrderByDescending(entry => entry.Baked.Count).ThenBy(entry => entry.Source.LayerNumber).ToList();
        var found = suspects.Take(MostSuspects).Where(entry => IsResponsible(entry, tolerance)).ToList();
        if (found.Count > 0) return found;
        // Adjustments mean something else in other colours, and reach everywhere.
        return suspects.Count > 0 && before.ColorMode == after.ColorMode ? suspects : [.. entries.Where(entry => entry is { Outcome: RigOutcome.Kept, Target.EffectivelyVisible: true }), .. suspects];
    }

    private bool IsResponsible(RigEntry entry, double tolerance)
    {
        var area = entry.Target!.Bounds.Intersect(new Bounds(0, 0, before.Width, before.Height));
        var with = Compare(area, hiddenBefore: null, hiddenAfter: null);
        if (with.Largest <= tolerance) return false;
        var without = Compare(area, entry.Source, entry.Target);
        return without.Largest <= tolerance || without.Mean < with.Mean / 2;
    }

    private RigDifference Compare(Bounds area, Layer? hiddenBefore, Layer? hiddenAfter)
    {
        using var beforeReader = new PixelReader(before);
        using var first = RigPicture.Draw(new Compositor(before, beforeReader, Options(layer => layer.Visible && !selection.IsLeftOut(layer) && layer != hiddenBefore)), area, []);
        using var afterReader = new PixelReader(after);
        var difference = new RigDifference(area.Width, area.Height);
        var rows = Enumerable.Range(0, StraightSink.ChannelCount).Select(_ => new byte[area.Width]).ToArray();
        new Compositor(after, afterReader, Options(layer => layer.Visible && layer != hiddenAfter)).RenderStraight(Take);
        return difference;

        CompositeOptions Options(Func<Layer, bool> shows) => new() { Shows = shows, Area = area, Cancellation = cancellation };

        void Take(MergedBand band)
        {
            for (var row = 0; row < band.RowCount; row++)
            {
                for (var channel = 0; channel < rows.Length; channel++) first.Read(channel, area.Top + band.Top + row, area.Left, rows[channel]);
                CompareRow(band, row, rows, difference);
            }
        }
    }

    private static void CompareRow(MergedBand band, int row, byte[][] before, RigDifference difference)
    {
        var width = before[0].Length;
        var red = band.GetRows(0).Slice(row * width, width);
        var green = band.GetRows(1).Slice(row * width, width);
        var blue = band.GetRows(2).Slice(row * width, width);
        var alpha = band.GetRows(3).Slice(row * width, width);
        if (red.SequenceEqual(before[0]) && green.SequenceEqual(before[1]) && blue.SequenceEqual(before[2]) && alpha.SequenceEqual(before[3])) return;
        for (var x = 0; x < width; x++)
        {
            var (old, now) = (before[3][x], alpha[x]);
            difference.Add(x, band.Top + row, Distance(before[0][x] * old, red[x] * now), Distance(before[1][x] * old, green[x] * now), Distance(before[2][x] * old, blue[x] * now), Math.Abs(old - now));
        }
    }

    /// <summary>Of two premultiplied values, each 0 to 255², in steps of 1/255, rounded.</summary>
    private static int Distance(int one, int other) => (Math.Abs(one - other) + (byte.MaxValue / 2)) / byte.MaxValue;
}
