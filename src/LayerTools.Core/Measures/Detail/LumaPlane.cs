using LayerTools.Pixels;

namespace LayerTools.Measures.Detail;

/// <summary>How light a part is, 0 to 255, laid on white, so that its outline is an edge like any other.</summary>
internal sealed class LumaPlane
{
    private readonly float[] values;

    private LumaPlane(int width, int height)
    {
        Width = width;
        Height = height;
        values = new float[width * height];
    }

    public int Width { get; }

    public int Height { get; }

    public float this[int x, int y] => values[(y * Width) + x];

    /// <summary>The luma of ITU-R BT.601 of a picture, or of its middle where it is larger than a limit.</summary>
    /// <param name="raster">The picture.</param>
    /// <param name="largestSide">Most columns and rows, px.</param>
    public static LumaPlane Of(Raster raster, int largestSide)
    {
        var (width, height) = (Math.Min(raster.Width, largestSide), Math.Min(raster.Height, largestSide));
        var plane = new LumaPlane(width, height);
        var (left, top) = ((raster.Width - width) / 2, (raster.Height - height) / 2);
        for (var y = 0; y < height; y++)
        {
            var row = raster.Row(top + y).Slice(4 * left, 4 * width);
            for (var x = 0; x < width; x++)
            {
                var pixel = row.Slice(4 * x, 4);
                var luma = (0.299f * pixel[0]) + (0.587f * pixel[1]) + (0.114f * pixel[2]);
                plane.values[(y * width) + x] = 255f + ((luma - 255f) * pixel[3] / 255f);
            }
        }

        return plane;
    }

    /// <summary>The same with rows and columns exchanged.</summary>
    public LumaPlane Transpose()
    {
        var turned = new LumaPlane(Height, Width);
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++) turned.values[(x * Height) + y] = values[(y * Width) + x];
        }

        return turned;
    }
}
