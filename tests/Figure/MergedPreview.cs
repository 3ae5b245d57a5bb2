using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using SkiaSharp;

namespace LayerTools.Figure;

/// <summary>Shows the merged picture that a file holds, at a quarter of its size.</summary>
internal static class MergedPreview
{
    private const int Step = 4;
    private const int ColorCount = 3;

    /// <exception cref="Errors.LayeredFileException">The file or its picture cannot be read.</exception>
    public static void Write(string path, string pngPath)
    {
        var file = LayerFiles.Read(path);
        using var opened = new OpenedSources();
        var picture = new StoredPicture((PsdFileDetail)file.Detail, opened, path);
        using var bitmap = new SKBitmap(new SKImageInfo(file.Width / Step, file.Height / Step, SKColorType.Rgba8888, SKAlphaType.Opaque));
        for (var color = 0; color < ColorCount; color++) Shrink(picture.OpenChannel(color), picture.RowBytes, bitmap, color);
        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(SKEncodedImageFormat.Png, 90);
        using var stream = File.Create(pngPath);
        data.SaveTo(stream);
    }

    private static void Shrink(StoredPicture.Channel channel, int rowBytes, SKBitmap bitmap, int color)
    {
        var row = new byte[rowBytes];
        var sums = new int[bitmap.Width];
        var pixels = bitmap.GetPixelSpan();
        for (var y = 0; y < bitmap.Height; y++)
        {
            Array.Clear(sums);
            for (var i = 0; i < Step; i++)
            {
                channel.ReadRow(row);
                for (var x = 0; x < sums.Length * Step; x++) sums[x / Step] += row[x];
            }

            for (var x = 0; x < sums.Length; x++)
            {
                var pixel = pixels.Slice(y * bitmap.RowBytes + x * 4, 4);
                pixel[color] = (byte)(sums[x] / (Step * Step));
                pixel[3] = byte.MaxValue;
            }
        }
    }
}
