using LayerTools.Sheets.Pages;
using SkiaSharp;

namespace LayerTools.Sheets.Rendering;

/// <summary>Draws the small shapes beside the words of a state.</summary>
internal static class ChipPainter
{
    private const float EdgeWidth = 1.3f;

    public static void Paint(SKCanvas canvas, ChipElement chip, SKPaint paint)
    {
        var edge = PagePainter.ToColor(chip.Edge);
        var fill = chip.Fill is { } color ? PagePainter.ToColor(color) : (SKColor?)null;
        var box = SKRect.Inflate(PagePainter.ToRect(chip.Area), -EdgeWidth / 2, -EdgeWidth / 2);
        var (x, y, radius) = (box.MidX, box.MidY, box.Width / 2);
        paint.StrokeWidth = EdgeWidth;
        switch (chip.Shape)
        {
            case StateShape.Disc:
                Fill(fill ?? edge, () => canvas.DrawCircle(x, y, radius, paint));
                Outline(() => canvas.DrawCircle(x, y, radius, paint));
                break;
            case StateShape.Ring:
                if (fill is { } dot) Fill(dot, () => canvas.DrawCircle(x, y, radius * 0.55f, paint));
                Outline(() => canvas.DrawCircle(x, y, radius, paint));
                break;
            case StateShape.Square:
                if (fill is { } inner) Fill(inner, () => canvas.DrawRect(box, paint));
                Outline(() => canvas.DrawRect(box, paint));
                break;
            case StateShape.Bar:
                var bar = SKRect.Create(box.Left, y - (radius * 0.4f), box.Width, radius * 0.8f);
                if (fill is { } middle) Fill(middle, () => canvas.DrawRect(bar, paint));
                Outline(() => canvas.DrawRect(bar, paint));
                break;
            case StateShape.Cross:
                Outline(() =>
                {
                    canvas.DrawLine(box.Left, box.Top, box.Right, box.Bottom, paint);
                    canvas.DrawLine(box.Left, box.Bottom, box.Right, box.Top, paint);
                });
                break;
        }

        void Fill(SKColor color, Action draw)
        {
            (paint.Style, paint.Color) = (SKPaintStyle.Fill, color);
            draw();
        }

        void Outline(Action draw)
        {
            (paint.Style, paint.Color) = (SKPaintStyle.Stroke, edge);
            draw();
        }
    }
}
