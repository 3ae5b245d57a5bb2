using System.Runtime.InteropServices;
using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Text;
using SkiaSharp;

namespace LayerTools.Sheets.Rendering;

/// <summary>Draws a page on any canvas, at any scale.</summary>
internal sealed class PagePainter
{
    private readonly TextShaper shaper;

    public PagePainter(TextShaper shaper) => this.shaper = shaper;

    /// <param name="canvas">What is drawn on.</param>
    /// <param name="page">The page.</param>
    /// <param name="scale">Units of the canvas for one px of the layout.</param>
    /// <param name="flatten">Whether pictures are joined with what they stand on, for canvases that store transparency at a high price.</param>
    public void Paint(SKCanvas canvas, SheetPage page, float scale = 1, bool flatten = false)
    {
        canvas.Clear(ToColor(page.Paper));
        canvas.Save();
        canvas.Scale(scale);
        foreach (var element in page.Elements) Paint(canvas, element, flatten);
        canvas.Restore();
    }

    private void Paint(SKCanvas canvas, PageElement element, bool flatten)
    {
        using var paint = new SKPaint { IsAntialias = true, Style = SKPaintStyle.Fill };
        switch (element)
        {
            case FillElement fill:
                paint.Color = ToColor(fill.Color);
                canvas.DrawRect(ToRect(fill.Area), paint);
                break;
            case CheckerElement checker:
                PaintChecker(canvas, checker, paint);
                break;
            case FrameElement frame:
                PaintEdge(paint, frame.Color);
                canvas.DrawRect(SKRect.Inflate(ToRect(frame.Area), -0.5f, -0.5f), paint);
                break;
            case ChipElement chip:
                ChipPainter.Paint(canvas, chip, paint);
                break;
            case PictureElement { Ground: not null } picture when flatten:
                PaintFlat(canvas, picture);
                break;
            case PictureElement picture:
                PaintPicture(canvas, picture, FindPlace(picture));
                break;
            case TextElement text:
                paint.Color = ToColor(text.Color);
                PaintText(canvas, text, paint);
                break;
        }
    }

    private static void PaintEdge(SKPaint paint, Rgb color)
    {
        paint.Style = SKPaintStyle.Stroke;
        paint.StrokeWidth = 1;
        paint.Color = ToColor(color);
    }

    private static void PaintChecker(SKCanvas canvas, CheckerElement checker, SKPaint paint)
    {
        var area = checker.Area;
        paint.Color = ToColor(checker.First);
        canvas.DrawRect(ToRect(area), paint);
        paint.Color = ToColor(checker.Second);
        for (var y = 0; y * checker.Square < area.Height; y++)
        {
            for (var x = 1 - y % 2; x * checker.Square < area.Width; x += 2)
            {
                var square = Bounds.FromSize(area.Left + x * checker.Square, area.Top + y * checker.Square, checker.Square, checker.Square);
                canvas.DrawRect(ToRect(square.Intersect(area)), paint);
            }
        }
    }

    /// <summary>Where a picture stands, px of the layout, so that each of its pixels falls on one of the page's.</summary>
    private static SKRect FindPlace(PictureElement element)
    {
        var (area, density) = (element.Area, (float)element.Density);
        var (width, height) = (element.Picture.Width * element.Zoom / density, element.Picture.Height * element.Zoom / density);
        return SKRect.Create(Snap(area.Left, area.Width - width), Snap(area.Top, area.Height - height), width, height);

        float Snap(int start, float spare) => start + ((float)Math.Floor(spare / 2 * density) / density);
    }

    private static void PaintPicture(SKCanvas canvas, PictureElement element, SKRect place)
    {
        var raster = element.Picture;
        var pinned = GCHandle.Alloc(raster.Pixels, GCHandleType.Pinned);
        try
        {
            using var image = SKImage.FromPixelCopy(new SKImageInfo(raster.Width, raster.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul), pinned.AddrOfPinnedObject());
            canvas.DrawImage(image, place, new SKSamplingOptions(SKFilterMode.Nearest));
        }
        finally
        {
            pinned.Free();
        }
    }

    /// <summary>The picture and what it stands on as one picture without transparency.</summary>
    private void PaintFlat(SKCanvas canvas, PictureElement element)
    {
        var (place, density) = (FindPlace(element), element.Density);
        var info = new SKImageInfo(element.Picture.Width * element.Zoom, element.Picture.Height * element.Zoom, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info);
        if (surface is null)
        {
            PaintPicture(canvas, element, place);
            return;
        }

        surface.Canvas.Scale(density);
        surface.Canvas.Translate(-place.Left, -place.Top);
        foreach (var ground in element.Ground!.Elements) Paint(surface.Canvas, ground, flatten: false);
        PaintPicture(surface.Canvas, element, place);
        using var image = surface.Snapshot();
        canvas.DrawImage(image, place, new SKSamplingOptions(SKFilterMode.Linear));
    }

    private void PaintText(SKCanvas canvas, TextElement element, SKPaint paint)
    {
        var line = shaper.Shape(element.Text, element.Style);
        var room = element.Area.Width - line.Width;
        var x = element.Area.Left + element.Alignment switch
        {
            TextAlignment.Middle => room / 2,
            TextAlignment.End => room,
            _ => 0,
        };
        var y = element.Area.Top + shaper.GetBaseline(element.Style);

        // Some fonts draw far above and below their line: what belongs to one line stays in it.
        canvas.Save();
        canvas.ClipRect(SKRect.Inflate(ToRect(element.Area), 2, 2));
        foreach (var run in line.Runs)
        {
            using var builder = new SKTextBlobBuilder();
            var buffer = builder.AllocatePositionedTextRun(shaper.GetFont(run.Typeface, element.Style.Size), run.Glyphs.Length, run.Text.Length);
            buffer.SetGlyphs(run.Glyphs);
            buffer.SetPositions(run.Positions);
            buffer.SetText(run.Text);
            buffer.SetClusters(run.Clusters);
            using var blob = builder.Build();
            if (blob is not null) canvas.DrawText(blob, (float)x, (float)Math.Round(y), paint);
        }

        canvas.Restore();
    }

    internal static SKColor ToColor(Rgb color) => new(color.R, color.G, color.B);

    internal static SKRect ToRect(Bounds area) => new(area.Left, area.Top, area.Right, area.Bottom);
}
