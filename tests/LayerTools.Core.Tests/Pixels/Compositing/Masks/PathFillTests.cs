using LayerTools.Model;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Masks;
using Xunit;

namespace LayerTools.Tests.Pixels.Compositing.Masks;

/// <summary>Paths on an invented canvas of 10 × 10 px; coordinates are px.</summary>
public class PathFillTests
{
    private const int Side = 10;

    [Fact]
    public void Edges_between_pixels_cover_them_in_part()
    {
        var fill = Create(Box(PathOperation.Unite, 1.25, 2.5, 4.5, 4));

        Assert.Equal(new float[Side], Row(fill, 1));
        Assert.Equal(new[] { 0f, 0.375f, 0.5f, 0.5f, 0.25f, 0f, 0f, 0f, 0f, 0f }, Row(fill, 2));
        Assert.Equal(new[] { 0f, 0.75f, 1f, 1f, 0.5f, 0f, 0f, 0f, 0f, 0f }, Row(fill, 3));
        Assert.Equal(new float[Side], Row(fill, 4));
    }

    [Fact]
    public void A_circle_covers_its_area()
    {
        // Four curves whose handles are 0.5522847 of the radius, the usual approximation of a circle (off by less than 0.03 %).
        const double R = 4;
        const double H = 0.5522847 * R;
        var fill = Create(Outline(PathOperation.Unite, [
            Knot(5 - H, 1, 5, 1, 5 + H, 1), Knot(9, 5 - H, 9, 5, 9, 5 + H), Knot(5 + H, 9, 5, 9, 5 - H, 9), Knot(1, 5 + H, 1, 5, 1, 5 - H)]));

        Assert.Equal(Math.PI * R * R, Enumerable.Range(0, Side).Sum(y => Row(fill, y).Sum()), 1);
    }

    /// <summary>From (8, 8) back to (2, 2) handles bend the closing curve far to the left; an open outline ends in a straight line.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Open_outlines_end_in_a_straight_line(bool isClosed)
    {
        PathKnot[] knots = [Knot(0, 8, 2, 2, 2, 2), Corner(8, 2), Knot(8, 8, 8, 8, 0, 8)];
        var fill = Create(new PathOutline(PathOperation.Unite, knots, isClosed));

        Assert.Equal(isClosed ? 1 : 0.5, Row(fill, 6)[6], 1);
        Assert.Equal(isClosed, Row(fill, 6)[3] > 0);
    }

    /// <summary>Two boxes that overlap in column 3 alone: columns 1 to 3 and 3 to 5.</summary>
    [Theory]
    [InlineData((int)PathOperation.Unite, "0111110000")]
    [InlineData((int)PathOperation.Exclude, "0110110000")]
    [InlineData((int)PathOperation.Subtract, "0110000000")]
    [InlineData((int)PathOperation.Intersect, "0001000000")]
    public void Shapes_join_by_their_operation(int operation, string expected) =>
        Assert.Equal(expected, Digits(Create(Box(PathOperation.Unite, 1, 1, 4, 9), Box((PathOperation)operation, 3, 1, 6, 9)), 5));

    [Fact]
    public void Outlines_of_one_shape_leave_holes_where_they_overlap() =>
        Assert.Equal("0110110000", Digits(Create(Box(PathOperation.Unite, 1, 1, 6, 9), Box(null, 3, 1, 4, 9)), 5));

    [Theory]
    [InlineData((int)PathOperation.Unite, "0111000000")]
    [InlineData((int)PathOperation.Exclude, "0111000000")]
    [InlineData((int)PathOperation.Subtract, "1000111111")]
    [InlineData((int)PathOperation.Intersect, "0111000000")]
    public void The_first_shape_cuts_from_everything_if_it_cuts(int operation, string expected) =>
        Assert.Equal(expected, Digits(Create(Box((PathOperation)operation, 1, 1, 4, 9)), 5));

    [Fact]
    public void Inverted_paths_show_what_lies_outside()
    {
        var fill = new PathFill(new VectorPath([Box(PathOperation.Unite, 1, 1, 4, 9)], IsFilledWhenEmpty: false, IsInverted: true, IsDisabled: false), Side, Side);

        Assert.Equal("1000111111", Digits(fill, 5));
        Assert.Equal("1111111111", Digits(fill, 0));
        Assert.Equal(1f, fill.Outside);
    }

    [Theory]
    [InlineData(false, "0000000000")]
    [InlineData(true, "1111111111")]
    public void A_path_without_points_is_all_or_nothing(bool isFilled, string expected) =>
        Assert.Equal(expected, Digits(new PathFill(new VectorPath([], isFilled, IsInverted: false, IsDisabled: false), Side, Side), 5));

    [Fact]
    public void Pieces_of_a_row_are_alike_wherever_they_begin()
    {
        var fill = Create(Box(PathOperation.Unite, 1.25, 2.5, 8.5, 7));
        var piece = new float[4];
        fill.Fill(5, 6, piece);

        Assert.Equal(Row(fill, 5)[6..], piece);
    }

    [Fact]
    public void Points_far_outside_the_canvas_do_no_harm() =>
        Assert.Equal("1111111111", Digits(Create(Box(PathOperation.Unite, -1e9, -1e9, 1e9, 1e9)), 5));

    private static PathFill Create(params PathOutline[] outlines) => new(new VectorPath(outlines, IsFilledWhenEmpty: false, IsInverted: false, IsDisabled: false), Side, Side);

    private static PathOutline Box(PathOperation? operation, double left, double top, double right, double bottom) =>
        Outline(operation, [Corner(left, top), Corner(right, top), Corner(right, bottom), Corner(left, bottom)]);

    private static PathOutline Outline(PathOperation? operation, PathKnot[] knots) => new(operation, knots);

    private static PathKnot Corner(double x, double y) => Knot(x, y, x, y, x, y);

    private static PathKnot Knot(double inX, double inY, double x, double y, double outX, double outY) => new(inX / Side, inY / Side, x / Side, y / Side, outX / Side, outY / Side);

    private static float[] Row(PathFill fill, int y)
    {
        var row = new float[Side];
        fill.Fill(y, 0, row);
        return [.. row.Select(value => MathF.Round(value, 4))];
    }

    private static string Digits(PathFill fill, int y) => string.Concat(Row(fill, y).Select(value => value.ToString("0", System.Globalization.CultureInfo.InvariantCulture)));
}
