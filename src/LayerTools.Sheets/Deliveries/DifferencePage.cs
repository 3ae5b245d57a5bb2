using LayerTools.Deliveries;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Deliveries;

/// <summary>Puts a repainted part on a page: before, after, and where both differ, side by side, with the box of the change around it in each.</summary>
internal sealed class DifferencePage
{
    /// <summary>Most columns and rows of each picture, px.</summary>
    public const int LargestSide = 480;

    private const int SmallestSide = 240;
    private const int LabelHeight = 26;
    private const int Gap = 28;

    /// <summary>The ends of the greys for what differs: both well below that of what is the same, so that the picture can be read without colour.</summary>
    private const int SlightGrey = 96;
    private const int SameGrey = 206;

    private static readonly Palette Colors = Palette.For(SheetBackground.Grey);

    private readonly List<PageElement> elements = [];
    private readonly ITextRuler ruler;
    private readonly LayerDifference difference;
    private readonly DifferenceMap map;
    private readonly int zoom;

    private DifferencePage(LayerDifference difference, DifferenceMap map, ITextRuler ruler)
    {
        (this.difference, this.map, this.ruler) = (difference, map, ruler);
        zoom = Math.Max(1, SmallestSide / Math.Max(map.After.Width, map.After.Height));
    }

    /// <summary>Composes the page.</summary>
    /// <param name="difference">What happened to the part.</param>
    /// <param name="map">What it looked like and looks like.</param>
    /// <param name="ruler">Says how wide text is.</param>
    public static SheetPage Compose(LayerDifference difference, DifferenceMap map, ITextRuler ruler) => new DifferencePage(difference, map, ruler).Compose();

    private SheetPage Compose()
    {
        var (width, height) = (Math.Max(map.After.Width * zoom, SmallestSide), map.After.Height * zoom);
        var pageWidth = (2 * SheetMetrics.Margin) + (3 * width) + (2 * Gap);
        var line = pageWidth - (2 * SheetMetrics.Margin);
        var top = SheetMetrics.Margin;
        top = AddWords(SafeText.Clean(difference.LayerPath), SheetMetrics.Title, Colors.Ink, SheetMetrics.Margin, top, line);
        top = AddWords(Describe(), SheetMetrics.Subtitle, Colors.QuietInk, SheetMetrics.Margin, top, line);
        top = AddWords(DescribeScale(), SheetMetrics.Subtitle, Colors.QuietInk, SheetMetrics.Margin, top, line) + (Gap / 2);
        (string Label, Raster Picture)[] panels = [("Before", OnGround(map.Before)), ("After", OnGround(map.After)), ("Dark: differs; light: the same", DrawDifferences())];
        var left = SheetMetrics.Margin;
        foreach (var (label, picture) in panels)
        {
            AddWords(label, SheetMetrics.Name, Colors.Ink, left, top, width);
            Outline(picture);
            elements.Add(new PictureElement(Bounds.FromSize(left, top + LabelHeight, picture.Width, picture.Height), picture));
            left += width + Gap;
        }

        return new SheetPage(pageWidth, top + LabelHeight + height + SheetMetrics.Margin, Colors.Paper, elements);
    }

    private static string Say(FormattableString text) => FormattableString.Invariant(text);

    private string Describe()
    {
        var box = difference.ChangedBox!.Value;
        var moved = difference.MovedRight is null ? string.Empty : Say($" · moved by {difference.MovedRight}, {difference.MovedDown} px, which is left out here");
        return Say($"{difference.RepaintedPercent:0.##} % of its pixels differ, by {difference.LargestDifference} of 255 at most · within {box.Width} × {box.Height} px at {box.Left}, {box.Top}{moved}");
    }

    private string DescribeScale()
    {
        var scale = (double)map.After.Width * zoom / map.Area.Width;
        var shown = scale > 1 ? Say($"1 px is shown as {scale:0.##}") : scale < 1 ? Say($"1 px stands for {1 / scale:0.##} px") : "pixel for pixel";
        return Say($"{map.Area.Width} × {map.Area.Height} px, {shown} · the frame is the box of the change");
    }

    private int AddWords(string words, TextStyle style, Rgb color, int left, int top, int width)
    {
        elements.Add(new TextElement(Bounds.FromSize(left, top, width, style.LineHeight), MiddleShortener.Fit(words, style, width, ruler), style, color, Colors.Paper));
        return top + style.LineHeight;
    }

    private Raster OnGround(Raster part) => Draw((x, y) =>
    {
        var pixel = part.Row(y).Slice(4 * x, 4);
        var (ground, alpha) = (Colors.Tile, pixel[3]);
        return new Rgb(Mix(pixel[0], ground.R, alpha), Mix(pixel[1], ground.G, alpha), Mix(pixel[2], ground.B, alpha));
    });

    private static byte Mix(byte color, byte ground, byte alpha) => (byte)(((color * alpha) + (ground * (byte.MaxValue - alpha)) + (byte.MaxValue / 2)) / byte.MaxValue);

    private Raster DrawDifferences() => Draw((x, y) =>
    {
        var differing = map.Difference(x, y);
        if (differing == 0) return map.IsPainted(x, y) ? Grey(SameGrey) : Colors.Tile;
        return Grey(SlightGrey - (SlightGrey * differing / byte.MaxValue));
    });

    private static Rgb Grey(int level) => new((byte)level, (byte)level, (byte)level);

    private Raster Draw(Func<int, int, Rgb> colorOf)
    {
        var picture = new Raster(map.After.Width * zoom, map.After.Height * zoom);
        for (var y = 0; y < picture.Height; y++)
        {
            var row = picture.Row(y);
            for (var x = 0; x < picture.Width; x++) Set(row, x, colorOf(x / zoom, y / zoom));
        }

        return picture;
    }

    /// <summary>A line of white around one of black, a little away from the change: seen on every ground.</summary>
    private void Outline(Raster picture)
    {
        const int Distance = 3;
        var box = difference.ChangedBox!.Value;
        var scaleX = (double)picture.Width / map.Area.Width;
        var scaleY = (double)picture.Height / map.Area.Height;
        var frame = new Bounds(
            (int)Math.Floor((box.Left - map.Area.Left) * scaleX) - Distance,
            (int)Math.Floor((box.Top - map.Area.Top) * scaleY) - Distance,
            (int)Math.Ceiling((box.Right - map.Area.Left) * scaleX) + Distance,
            (int)Math.Ceiling((box.Bottom - map.Area.Top) * scaleY) + Distance);
        Trace(picture, frame, Grey(0));
        Trace(picture, new Bounds(frame.Left - 1, frame.Top - 1, frame.Right + 1, frame.Bottom + 1), Grey(255));
    }

    private static void Trace(Raster picture, Bounds frame, Rgb color)
    {
        for (var x = Math.Max(0, frame.Left); x < Math.Min(picture.Width, frame.Right); x++)
        {
            foreach (var y in new[] { frame.Top, frame.Bottom - 1 }.Where(y => y >= 0 && y < picture.Height)) Set(picture.Row(y), x, color);
        }

        for (var y = Math.Max(0, frame.Top); y < Math.Min(picture.Height, frame.Bottom); y++)
        {
            foreach (var x in new[] { frame.Left, frame.Right - 1 }.Where(x => x >= 0 && x < picture.Width)) Set(picture.Row(y), x, color);
        }
    }

    private static void Set(Span<byte> row, int x, Rgb color) => (row[4 * x], row[(4 * x) + 1], row[(4 * x) + 2], row[(4 * x) + 3]) = (color.R, color.G, color.B, byte.MaxValue);
}
