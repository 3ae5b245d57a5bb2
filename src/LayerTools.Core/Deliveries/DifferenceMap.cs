using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Parts;

namespace LayerTools.Deliveries;

/// <summary>A repainted layer before and after, and where both differ, small enough to be looked at. Masks do not count.</summary>
internal sealed class DifferenceMap
{
    private readonly byte[] painted;
    private readonly byte[] differences;

    private DifferenceMap(Bounds area, Raster before, Raster after, byte[] painted, byte[] differences) =>
        (Area, Before, After, this.painted, this.differences) = (area, before, after, painted, differences);

    /// <summary>What is shown, canvas px of the new file.</summary>
    public Bounds Area { get; }

    /// <summary>The old pixels, moved to where the new ones lie.</summary>
    public Raster Before { get; }

    /// <summary>The new pixels.</summary>
    public Raster After { get; }

    /// <summary>Whether a pixel that is painted before or after lies in a cell of the pictures.</summary>
    public bool IsPainted(int x, int y) => painted[(y * After.Width) + x] > 0;

    /// <summary>The largest difference of a pixel in a cell, premultiplied, in levels of 255: so one changed pixel is seen however small the picture is.</summary>
    public int Difference(int x, int y) => differences[(y * After.Width) + x];

    /// <summary>Draws both states of a layer.</summary>
    /// <param name="oldReader">The old file.</param>
    /// <param name="old">The layer in it.</param>
    /// <param name="newReader">The new file.</param>
    /// <param name="new">The layer in it.</param>
    /// <param name="right">How far the layer was moved to the right, px.</param>
    /// <param name="down">How far it was moved down, px.</param>
    /// <param name="largestSide">Most columns and rows of the pictures; smaller layers are not enlarged.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, or a file changed on disk.</exception>
    public static DifferenceMap Read(ContentReader oldReader, Layer old, ContentReader newReader, Layer @new, int right, int down, int largestSide, CancellationToken cancellation)
    {
        var (oldPainted, newPainted) = (oldReader.ReadOutline(old).Painted, newReader.ReadOutline(@new).Painted);
        var area = (oldPainted.IsEmpty ? oldPainted : oldPainted.Shift(right, down)).Union(newPainted);
        var scale = Math.Min(1, (double)largestSide / Math.Max(area.Width, area.Height));
        var (width, height) = (Math.Max(1, (int)Math.Round(area.Width * scale)), Math.Max(1, (int)Math.Round(area.Height * scale)));
        var (before, after) = (new AreaReducer(area.Width, area.Height, width, height), new AreaReducer(area.Width, area.Height, width, height));
        var (painted, differences) = (new byte[width * height], new byte[width * height]);
        using var oldRows = new PlacedRows(oldReader, old, oldPainted, right, down, area);
        using var newRows = new PlacedRows(newReader, @new, newPainted, 0, 0, area);
        for (var y = area.Top; y < area.Bottom; y++)
        {
            cancellation.ThrowIfCancellationRequested();
            Add(oldRows, before, y);
            Add(newRows, after, y);
            var line = (int)((long)(y - area.Top) * height / area.Height) * width;
            for (var x = 0; x < area.Width; x++)
            {
                if ((oldRows.Opacity[x] | newRows.Opacity[x]) == 0) continue;
                var cell = line + (int)((long)x * width / area.Width);
                painted[cell] = 1;
                differences[cell] = (byte)Math.Max(differences[cell], PixelDifference.Of(oldRows, newRows, x));
            }
        }

        return new DifferenceMap(area, before.Finish(), after.Finish(), painted, differences);
    }

    private static void Add(PlacedRows rows, AreaReducer reducer, int y)
    {
        rows.Read(y);
        reducer.AddRow(rows.Color(0), rows.Color(1), rows.Color(2), rows.Opacity);
    }
}
