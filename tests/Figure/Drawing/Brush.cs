using SkiaSharp;

namespace LayerTools.Figure.Drawing;

/// <summary>Paints soft shapes with line art, in figure coordinates.</summary>
internal sealed class Brush(SKCanvas canvas)
{
    /// <summary>The lines' usual width, px.</summary>
    public const float LineWidth = 11;

    /// <summary>A rounded form: light from above, darker towards its edges and its foot, and a line around it.</summary>
    public void Form(SKPath shape, Tone tone, float edge = 70, float line = LineWidth, float depth = 1, float light = 0.42f)
    {
        var box = shape.TightBounds;
        Gradient(shape, Tone.Mix(tone.Base, tone.Light, light * 2), tone.Base, Tone.Mix(tone.Base, tone.Shade, 0.55f * depth));
        Inside(shape, () =>
        {
            Rim(shape, tone.Shade, edge, 0.5f * depth);
            // The foot of a form turns away from the light.
            Glow(box.MidX, box.Bottom + box.Height * 0.08f, box.Width * 0.75f, box.Height * 0.22f, tone.Shade, 0.45f * depth);
            Glow(box.MidX - box.Width * 0.04f, box.Top + box.Height * 0.26f, box.Width * 0.3f, box.Height * 0.2f, tone.Light, light);
        });
        if (line > 0) Outline(shape, tone.Line, line);
    }

    /// <summary>Fills a shape from top to bottom.</summary>
    public void Gradient(SKPath shape, params SKColor[] colors)
    {
        var box = shape.TightBounds;
        using var shader = SKShader.CreateLinearGradient(new SKPoint(0, box.Top), new SKPoint(0, box.Bottom), colors, SKShaderTileMode.Clamp);
        using var paint = new SKPaint { IsAntialias = true, Shader = shader };
        canvas.DrawPath(shape, paint);
    }

    /// <summary>Fills a shape with one colour, its edge blurred by <paramref name="blur"/> px.</summary>
    public void Fill(SKPath shape, SKColor color, float opacity = 1, float blur = 0)
    {
        using var filter = blur > 0 ? SKMaskFilter.CreateBlur(SKBlurStyle.Normal, blur) : null;
        using var paint = new SKPaint { IsAntialias = true, Color = Thin(color, opacity), MaskFilter = filter };
        canvas.DrawPath(shape, paint);
    }

    /// <summary>A line around a shape.</summary>
    public void Outline(SKPath shape, SKColor color, float width = LineWidth, float opacity = 1)
    {
        using var paint = new SKPaint { IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = width, StrokeJoin = SKStrokeJoin.Round, Color = Thin(color, opacity) };
        canvas.DrawPath(shape, paint);
    }

    /// <summary>A pen stroke that swells and tapers.</summary>
    public void Stroke(string spine, SKColor color, float width = LineWidth, float opacity = 1) =>
        Fill(Outlines.Ribbon(spine, 0, width * 0.8f, width, width * 0.8f, 0), color, opacity);

    /// <summary>A soft round spot that fades to nothing at its radius.</summary>
    public void Glow(float x, float y, float radiusX, float radiusY, SKColor color, float opacity)
    {
        if (radiusX <= 0 || radiusY <= 0) return;
        var turn = SKMatrix.CreateTranslation(x, y).PreConcat(SKMatrix.CreateScale(1, radiusY / radiusX));
        SKColor[] colors = [Thin(color, opacity), Thin(color, opacity * 0.72f), Thin(color, opacity * 0.25f), Thin(color, 0)];
        using var shader = SKShader.CreateRadialGradient(default, radiusX, colors, [0, 0.35f, 0.7f, 1], SKShaderTileMode.Clamp, turn);
        using var paint = new SKPaint { IsAntialias = true, Shader = shader };
        canvas.DrawOval(x, y, radiusX, radiusY, paint);
    }

    /// <summary>Darkens the inside of a shape along its edge; call it inside the shape.</summary>
    public void Rim(SKPath shape, SKColor color, float width, float opacity)
    {
        using var filter = SKMaskFilter.CreateBlur(SKBlurStyle.Normal, width * 0.5f);
        using var paint = new SKPaint
        {
            IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeWidth = width, MaskFilter = filter, Color = Thin(color, opacity),
        };
        canvas.DrawPath(shape, paint);
    }

    /// <summary>Paints within a shape only.</summary>
    public void Inside(SKPath shape, Action paint)
    {
        canvas.Save();
        canvas.ClipPath(shape, SKClipOperation.Intersect, true);
        paint();
        canvas.Restore();
    }

    private static SKColor Thin(SKColor color, float opacity) => color.WithAlpha((byte)MathF.Round(255 * Math.Clamp(opacity, 0, 1)));
}
