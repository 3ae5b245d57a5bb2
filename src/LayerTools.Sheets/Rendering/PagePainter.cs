using System.Runtime.InteropServices;
using LayerTools.Model;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Text;
using SkiaSharp;

namespace LayerTools.Sheets.Rendering;

/// <summary>Draws a page on any canvas, 1 unit = 1 px at 100 %.</summary>
internal sealed class PagePainter
{
    private const float ChipRadius = 3;
    private readonly TextShaper shaper;

    public PagePainter(TextShaper shaper) => this.shaper = shaper;

    public void Paint(SKCanvas canvas, SheetPage page)
    {
        canvas.Clear(ToColor(page.Paper));
        using var paint = new SKPaint { IsAntialias = true };
        foreach (var element in page.Elements)
        {
            paint.Style = SKPaintStyle.Fill;
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
                    PaintChip(canvas, chip, paint);
                    break;
                case PictureElement picture:
                    PaintPicture(canvas, picture);
                    break;
                case TextElement text:
                    paint.Color = ToColor(text.Color);
                    PaintText(canvas, text, paint);
                    break;
            }
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

    private static void PaintChip(SKCanvas canvas, ChipElement chip, SKPaint paint)
    {
        var shape = SKRect.Inflate(ToRect(chip.Area), -0.5f, -0.5f);
        if (chip.Fill is { } fill)
        {
            paint.Color = ToColor(fill);
            canvas.DrawRoundRect(shape, ChipRadius, ChipRadius, paint);
        }

        PaintEdge(paint, chip.Edge);
        canvas.DrawRoundRect(shape, ChipRadius, ChipRadius, paint);
    }

    private static void PaintPicture(SKCanvas canvas, PictureElement element)
    {
        var raster = element.Picture;
        var pinned = GCHandle.Alloc(raster.Pixels, GCHandleType.Pinned);
        try
        {
            using var image = SKImage.FromPixelCopy(new SKImageInfo(raster.Width, raster.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul), pinned.AddrOfPinnedObject());
            canvas.DrawImage(image, element.Area.Left, element.Area.Top, new SKSamplingOptions(SKFilterMode.Nearest));
        }
        finally
        {
            pinned.Free();
        }
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
            builder.AddPositionedRun(run.Glyphs, shaper.GetFont(run.Typeface, element.Style.Size), run.Positions);
            using var blob = builder.Build();
            if (blob is not null) canvas.DrawText(blob, (float)x, (float)Math.Round(y), paint);
        }

        canvas.Restore();
    }

    private static SKColor ToColor(Rgb color) => new(color.R, color.G, color.B);

    private static SKRect ToRect(Bounds area) => new(area.Left, area.Top, area.Right, area.Bottom);
}
