using System.Runtime.InteropServices;
using LayerTools.Figure.Drawing;
using LayerTools.Figure.Parts;
using LayerTools.Model;
using LayerTools.Pixels;
using SkiaSharp;

namespace LayerTools.Figure;

/// <summary>Turns a part's drawing into pixels, in a picture no larger than the part.</summary>
internal sealed class PartPainter(float scale)
{
    private const int MottleCell = 40;
    private const int FibreLength = 10;

    public int CanvasWidth => (int)MathF.Round(Keeper.Width * scale);

    public int CanvasHeight => (int)MathF.Round(Keeper.Height * scale);

    /// <summary>The pixels of a layer and where they lie.</summary>
    public (Bounds Bounds, Raster Pixels) Paint(FigurePart part)
    {
        var (bounds, pixels) = Paint(part.Draw!, part.IsReflected);
        if (part.IsWash || part.Mode != BlendMode.Normal) Unify(pixels);
        else if (part.Grain > 0) AddGrain(bounds, pixels, part.Grain);
        return (bounds, pixels);
    }

    /// <summary>The samples of a mask, 255 where it was painted, and where they lie.</summary>
    public (Bounds Bounds, byte[] Samples) Paint(FigureMask mask, bool isReflected)
    {
        var (bounds, pixels) = Paint(mask.Draw, isReflected);
        var samples = new byte[pixels.Width * pixels.Height];
        for (var i = 0; i < samples.Length; i++) samples[i] = pixels.Pixels[i * 4 + 3];
        return (bounds, samples);
    }

    private (Bounds Bounds, Raster Pixels) Paint(Action<Brush> draw, bool isReflected)
    {
        using var picture = Record(draw, isReflected);
        var box = picture.CullRect;
        var area = new Bounds((int)MathF.Floor(box.Left), (int)MathF.Floor(box.Top), (int)MathF.Ceiling(box.Right), (int)MathF.Ceiling(box.Bottom))
            .Intersect(new Bounds(0, 0, CanvasWidth, CanvasHeight));
        var info = new SKImageInfo(area.Width, area.Height, SKColorType.Rgba8888, SKAlphaType.Premul);
        using var bitmap = new SKBitmap(info);
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Translate(-area.Left, -area.Top);
            canvas.DrawPicture(picture);
        }

        var pixels = new Raster(area.Width, area.Height);
        var pinned = GCHandle.Alloc(pixels.Pixels, GCHandleType.Pinned);
        try
        {
            using var map = bitmap.PeekPixels();
            map.ReadPixels(info.WithAlphaType(SKAlphaType.Unpremul), pinned.AddrOfPinnedObject(), area.Width * 4, 0, 0);
        }
        finally
        {
            pinned.Free();
        }

        return Trim(area, pixels);
    }

    /// <summary>A recording knows how far its drawing reaches.</summary>
    private SKPicture Record(Action<Brush> draw, bool isReflected)
    {
        using var recorder = new SKPictureRecorder();
        var canvas = recorder.BeginRecording(new SKRect(-CanvasWidth, -CanvasHeight, 2 * CanvasWidth, 2 * CanvasHeight), true);
        canvas.Scale(scale);
        canvas.Translate(Keeper.Width / 2f, 0);
        if (isReflected) canvas.Scale(-1, 1);
        draw(new Brush(canvas));
        return recorder.EndRecording();
    }

    private static (Bounds Bounds, Raster Pixels) Trim(Bounds area, Raster pixels)
    {
        int left = pixels.Width, right = 0, top = pixels.Height, bottom = 0;
        for (var y = 0; y < pixels.Height; y++)
        {
            var row = pixels.Row(y);
            var first = 0;
            while (first < pixels.Width && row[first * 4 + 3] == 0) first++;
            if (first == pixels.Width) continue;
            var last = pixels.Width - 1;
            while (row[last * 4 + 3] == 0) last--;
            (left, right) = (Math.Min(left, first), Math.Max(right, last + 1));
            (top, bottom) = (Math.Min(top, y), y + 1);
        }

        if (right <= left) return (Bounds.Empty, new Raster(0, 0));
        var trimmed = new Raster(right - left, bottom - top);
        for (var y = top; y < bottom; y++) pixels.Row(y)[(left * 4)..(right * 4)].CopyTo(trimmed.Row(y - top));
        return (new Bounds(left, top, right, bottom).Shift(area.Left, area.Top), trimmed);
    }

    /// <summary>Gives all painted pixels the colour that they have on average; faint ones carry only a rounded trace of it.</summary>
    private static void Unify(Raster pixels)
    {
        var sums = new long[4];
        for (var i = 0; i < pixels.Pixels.Length; i += 4)
        {
            var alpha = pixels.Pixels[i + 3];
            for (var channel = 0; channel < 3; channel++) sums[channel] += pixels.Pixels[i + channel] * alpha;
            sums[3] += alpha;
        }

        for (var i = 0; i < pixels.Pixels.Length; i += 4)
        {
            if (pixels.Pixels[i + 3] == 0) continue;
            for (var channel = 0; channel < 3; channel++) pixels.Pixels[i + channel] = (byte)(sums[channel] / sums[3]);
        }
    }

    /// <summary>The tooth of paper and the mottling of paint: without them a picture would pack to nothing, as no painted one does.</summary>
    private static void AddGrain(Bounds bounds, Raster pixels, int grain)
    {
        for (var y = 0; y < pixels.Height; y++)
        {
            var row = pixels.Row(y);
            for (var x = 0; x < pixels.Width; x++)
            {
                var pixel = row.Slice(x * 4, 4);
                if (pixel[3] == 0) continue;
                var (canvasX, canvasY) = (x + bounds.Left, y + bounds.Top);
                var tooth = (int)(Chance.Hash(canvasX / FibreLength, canvasY) % (uint)(grain + 1)) - grain / 2;
                var offset = tooth + (int)MathF.Round(Mottle(canvasX, canvasY) * grain);
                for (var channel = 0; channel < 3; channel++) pixel[channel] = (byte)Math.Clamp(pixel[channel] + offset, 0, 255);
            }
        }
    }

    /// <summary>Smooth noise from -1 to 1.</summary>
    private static float Mottle(int x, int y)
    {
        var (column, row) = (x / MottleCell, y / MottleCell);
        var (right, down) = ((float)(x % MottleCell) / MottleCell, (float)(y % MottleCell) / MottleCell);
        var top = Mix(Corner(column, row), Corner(column + 1, row), right);
        var bottom = Mix(Corner(column, row + 1), Corner(column + 1, row + 1), right);
        return Mix(top, bottom, down);
    }

    private static float Corner(int column, int row) => Chance.Hash(column - 7919, row + 104729) / (float)uint.MaxValue * 2 - 1;

    private static float Mix(float one, float other, float part) => one + (other - one) * part;
}
