using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Parts;

namespace LayerTools.Sheets.Parts;

/// <summary>Draws layers together and makes the result smaller, in linear light, band by band.</summary>
internal static class CompositePictures
{
    /// <summary>The rectangle of a group outside of which it draws nothing, canvas px.</summary>
    public static Bounds FindReach(LayerFile file, Layer group)
    {
        using var reader = new PixelReader(file);
        var reach = new Compositor(file, reader, new CompositeOptions { Subject = group }).FindReach();
        if (reach.Width <= AreaReducer.LargestSide && reach.Height <= AreaReducer.LargestSide) return reach;
        throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"group '{group.LayerPath}'", -1,
            FormattableString.Invariant($"It has a side of more than {AreaReducer.LargestSide} px."), "Cut its layers to what is painted.");
    }

    /// <summary>Draws a rectangle of a file once and makes pictures of it.</summary>
    /// <param name="file">The file.</param>
    /// <param name="reader">Its open channels.</param>
    /// <param name="area">The rectangle to draw, canvas px.</param>
    /// <param name="options">What is drawn of it.</param>
    /// <param name="targets">The pictures to make.</param>
    public static IReadOnlyList<Raster> Draw(LayerFile file, PixelReader reader, Bounds area, CompositeOptions options, IReadOnlyList<PictureTarget> targets)
    {
        var reducers = targets.Select(target => new FrameReducer(target, area)).ToList();
        new Compositor(file, reader, options with { Area = area }).RenderStraight(band =>
        {
            for (var row = band.Top; row < band.Top + band.RowCount; row++)
            {
                foreach (var reducer in reducers) reducer.AddRow(band.GetRow(0, row), band.GetRow(1, row), band.GetRow(2, row), band.GetRow(3, row));
            }
        });
        return reducers.ConvertAll(reducer => reducer.Finish());
    }
}
