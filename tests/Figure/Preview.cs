using LayerTools.Figure.Drawing;
using LayerTools.Figure.Parts;
using LayerTools.Model;
using SkiaSharp;

namespace LayerTools.Figure;

/// <summary>Composes the figure straight from its drawing, for a quick look that needs no layered file.</summary>
internal sealed class Preview(SKCanvas canvas)
{
    public static void Write(string path, IReadOnlyList<FigurePart> tree, float scale)
    {
        using var bitmap = new SKBitmap((int)(Keeper.Width * scale), (int)(Keeper.Height * scale));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Scale(scale);
            canvas.Translate(Keeper.Width / 2f, 0);
            new Preview(canvas).Compose(tree);
        }

        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(SKEncodedImageFormat.Png, 90);
        using var stream = File.Create(path);
        data.SaveTo(stream);
    }

    private void Compose(IReadOnlyList<FigurePart> parts)
    {
        for (var i = parts.Count - 1; i >= 0; i--)
        {
            var part = parts[i];
            // A run is a base and the layers clipped to it, which lie before it in the list.
            var run = new List<FigurePart>();
            while (i > 0 && parts[i - 1].IsClipped) run.Add(parts[--i]);
            if (part.IsHidden) continue;
            Apart(part.Mode, part.Opacity, () =>
            {
                Paint(part);
                foreach (var clipped in run.Where(one => !one.IsHidden)) Apart(clipped.Mode, clipped.Opacity, () => Paint(clipped), false);
                if (run.Count > 0) CutTo(part);
            }, part.IsGroup && part.Mode == BlendMode.PassThrough && part.Mask is null && part.Opacity == 1);
        }
    }

    private void Apart(BlendMode mode, float opacity, Action paint, bool isPassThrough)
    {
        if (isPassThrough)
        {
            paint();
            return;
        }

        using var blend = new SKPaint { BlendMode = ToSkia(mode), Color = SKColors.White.WithAlpha((byte)(255 * opacity)) };
        canvas.SaveLayer(blend);
        paint();
        canvas.Restore();
    }

    private void CutTo(FigurePart part)
    {
        using var cut = new SKPaint { BlendMode = SKBlendMode.DstIn };
        canvas.SaveLayer(cut);
        Paint(part);
        canvas.Restore();
    }

    private void Paint(FigurePart part)
    {
        if (part.IsGroup) Compose(part.Children);
        else
        {
            canvas.Save();
            if (part.IsReflected) canvas.Scale(-1, 1);
            part.Draw!(new Brush(canvas));
            canvas.Restore();
        }

        if (part.Mask is not { IsDisabled: false } mask) return;
        using var cut = new SKPaint { BlendMode = mask.IsInverted ? SKBlendMode.DstOut : SKBlendMode.DstIn };
        canvas.SaveLayer(cut);
        mask.Draw(new Brush(canvas));
        canvas.Restore();
    }

    private static SKBlendMode ToSkia(BlendMode mode) => mode switch
    {
        BlendMode.Multiply => SKBlendMode.Multiply,
        BlendMode.Screen => SKBlendMode.Screen,
        BlendMode.Overlay => SKBlendMode.Overlay,
        _ => SKBlendMode.SrcOver,
    };
}
