using ImageMagick;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Sheets.Pages;
using LayerTools.Sheets.Parts;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests;

/// <summary>What is shown, in which order, how large and where.</summary>
public sealed class SheetContentTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}");

    public void Dispose()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void Pairs_stand_side_by_side_and_a_missing_one_is_a_gap()
    {
        var plan = Plan(SheetArrangement.Pairs, "Nose", "Brow R", "Arm L", "Brow L", "Leg R");
        Assert.Equal(["Brow L", "Brow R", "Arm L", "no right part", "no left part", "Leg R", "Nose"], plan.Subjects.Select(SubjectWords.Name));
        Assert.Equal("5 parts \u00B7 2 without an opposite", plan.Counts);
        Assert.Equal("opposite of Arm L", SubjectWords.Path(plan.Subjects[3]));
    }

    [Fact]
    public void A_part_whose_opposite_was_not_chosen_is_no_gap()
    {
        var file = Figure("Arm L", "Arm R");
        var plan = SheetPlan.OfLayers(file, [file.Find("Arm L")], new SheetOptions { Arrangement = SheetArrangement.Pairs });
        Assert.Equal(["Arm L"], plan.Subjects.Select(SubjectWords.Name));
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(3, 2)]
    [InlineData(4, 4)]
    [InlineData(null, 4)]
    public void Rows_of_pairs_are_even(int? columns, int expected)
    {
        Assert.Equal(expected, SheetGrid.Plan(20, new SheetOptions { Arrangement = SheetArrangement.Pairs, Columns = columns }, "sheet.png").Columns);
        var paper = SheetGrid.Plan(20, new SheetOptions { Arrangement = SheetArrangement.Pairs, Columns = columns, PageSize = SheetPageSize.A4 }, "sheet.png");
        Assert.Equal(expected, paper.Columns);
    }

    [Fact]
    public void By_status_open_comes_first_and_backdrops_last()
    {
        var done = ModelBuilder.Pixel("Nose", mark: Mark.Green);
        var file = ModelBuilder.File(ModelBuilder.Pixel("Backdrop"), done, ModelBuilder.Pixel("Mouth"));
        var plan = SheetPlan.OfLayers(file, [.. file.GetLayers()], new SheetOptions { Arrangement = SheetArrangement.Status });
        Assert.Equal(["Mouth", "Nose", "Backdrop"], plan.Subjects.Select(SubjectWords.Name));
        Assert.Equal([StateShape.Ring, StateShape.Disc, StateShape.Bar], plan.Subjects.Select(SubjectWords.Shape));
        Assert.Equal(["open \u00B7 no mark", "done \u00B7 green mark", "backdrop \u00B7 no mark"], plan.Subjects.Select(SubjectWords.State));
    }

    [Fact]
    public void By_size_the_largest_comes_first()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Small", Bounds.FromSize(0, 0, 3, 3)), ModelBuilder.Pixel("Large", Bounds.FromSize(0, 0, 9, 9)), ModelBuilder.Pixel("Middle", Bounds.FromSize(0, 0, 5, 5)));
        var plan = SheetPlan.OfLayers(file, [.. file.GetLayers()], new SheetOptions { Arrangement = SheetArrangement.Size });
        Assert.Equal(["Large", "Middle", "Small"], plan.Subjects.Select(SubjectWords.Name));
    }

    [Fact]
    public void A_group_is_drawn_together()
    {
        var (red, blue) = (Plain("Red", Bounds.FromSize(10, 10, 20, 20), 200, 0, 0), Plain("Blue", Bounds.FromSize(40, 10, 20, 20), 0, 0, 200));
        var file = ModelBuilder.File(ModelBuilder.Group("Head", red, blue), ModelBuilder.Pixel("Nose"));
        var cell = Assert.Single(Draw(file, new SheetOptions { Content = SheetContent.Group }));
        Assert.Equal(Bounds.FromSize(10, 10, 50, 20), cell.Subject.Bounds);
        Assert.Equal((50, 20), (cell.Picture!.Width, cell.Picture.Height));
        Assert.Equal([200, 0, 0, 255], cell.Picture.Row(5).Slice(0, 4).ToArray());
        Assert.Equal(0, cell.Picture.Row(5)[(4 * 25) + 3]);
        Assert.Equal([0, 0, 200, 255], cell.Picture.Row(5).Slice(4 * 45, 4).ToArray());
        Assert.Equal("2 parts \u00B7 no mark", SubjectWords.State(cell.Subject));
    }

    [Fact]
    public void Files_are_cells_of_one_overview()
    {
        LayerFile[] files = [Figure("Nose", "Mouth"), Figure("Arm L")];
        var result = SheetWriter.WriteOverview(files, Path.Combine(folder, "overview.png"), new SheetOptions(), TestContext.Current.CancellationToken);
        Assert.Equal((2, 1), (result.PartCount, result.PageCount));
        var plan = SheetPlan.OfFiles(files, new SheetOptions());
        Assert.Equal("2 files \u00B7 3 parts", plan.Counts);
        Assert.Equal(["2 parts", "1 part"], plan.Subjects.Select(SubjectWords.State));
    }

    [Fact]
    public void In_place_a_part_is_in_full_strength_where_it_belongs_and_the_rest_is_faded_grey()
    {
        var file = ModelBuilder.File("hero.psd", 100, 60, Plain("Arm", Bounds.FromSize(50, 10, 40, 40), 220, 40, 40), Plain("Body", Bounds.FromSize(5, 5, 30, 50), 40, 160, 40));
        var arm = Draw(file, new SheetOptions { View = SheetView.InPlace })[0];
        Assert.Null(arm.Picture);
        Assert.Equal((100, 60), (arm.Placed!.Width, arm.Placed.Height));
        Assert.Equal([220, 40, 40, 255], arm.Placed.Row(30).Slice(4 * 70, 4).ToArray());
        var faded = arm.Placed.Row(30).Slice(4 * 20, 4).ToArray();
        Assert.True(faded[0] == faded[1] && faded[1] == faded[2]);
        Assert.InRange(faded[3], 1, 127);
        Assert.Equal(0, arm.Placed.Row(2)[3]);
    }

    [Fact]
    public void In_place_what_is_small_has_a_box_around_it()
    {
        var file = ModelBuilder.File("hero.psd", 100, 60, Plain("Dot", Bounds.FromSize(50, 30, 4, 4), 220, 40, 40));
        var placed = Draw(file, new SheetOptions { View = SheetView.InPlace })[0].Placed!;
        Assert.Equal([0, 0, 0, 255], placed.Row(31).Slice(4 * 45, 4).ToArray());
        Assert.Equal([255, 255, 255, 255], placed.Row(31).Slice(4 * 44, 4).ToArray());
    }

    [Fact]
    public void A_part_beyond_the_canvas_is_cut_in_place_and_whole_alone()
    {
        var file = ModelBuilder.File("hero.psd", 100, 60, Plain("Arm", Bounds.FromSize(-30, -20, 200, 100), 220, 40, 40));
        var cell = Draw(file, new SheetOptions { View = SheetView.Both, CellSize = 400 })[0];
        Assert.Equal((200, 100), (cell.Picture!.Width, cell.Picture.Height));
        Assert.Equal((100, 60), (cell.Placed!.Width, cell.Placed.Height));
        for (var i = 0; i < cell.Placed.Pixels.Length; i += 4) Assert.Equal([220, 40, 40, 255], cell.Placed.Pixels[i..(i + 4)]);
    }

    [Fact]
    public void At_a_common_scale_all_labels_say_the_same()
    {
        var file = ModelBuilder.File(Plain("Large", Bounds.FromSize(0, 0, 576, 100), 1, 2, 3), Plain("Small", Bounds.FromSize(0, 0, 100, 50), 1, 2, 3));
        var options = new SheetOptions { Scale = SheetScale.Common };
        var cells = Draw(file, options);
        Assert.Equal([(288, 50), (50, 25)], cells.Select(cell => (cell.Picture!.Width, cell.Picture.Height)));
        Assert.Equal(["576 \u00D7 100 px \u00B7 at 50 %, as all", "100 \u00D7 50 px \u00B7 at 50 %, as all"], cells.Select(cell => SubjectWords.Size(cell, options)));
    }

    [Fact]
    public void Nothing_is_enlarged_unless_asked_and_then_by_whole_numbers_with_hard_pixels()
    {
        var part = ModelBuilder.Pixel("Iris L", Bounds.FromSize(0, 0, 40, 30));
        var file = ModelBuilder.File(part);
        Assert.Equal(1, Draw(file, new SheetOptions())[0].Fit!.Zoom);
        var options = new SheetOptions { Enlarge = true };
        var cell = Draw(file, options)[0];
        Assert.Equal(7, cell.Fit!.Zoom);
        Assert.Equal("40 \u00D7 30 px \u00B7 at 700 %", SubjectWords.Size(cell, options));
        SheetWriter.Write(file, [part], Path.Combine(folder, "sheet.png"), options, TestContext.Current.CancellationToken);
        using var image = new MagickImage(Path.Combine(folder, "sheet.png"));
        using var pixels = image.GetPixels();
        var (left, top) = (48 + 20, 48 + SheetStyle.Screen.HeaderHeight + 55);
        for (var y = 0; y < 210; y++)
        {
            for (var x = 0; x < 280; x++) Assert.Equal(cell.Picture!.Row(y / 7).Slice(4 * (x / 7), 3).ToArray(), pixels.GetValue(left + x, top + y)!.Take(3));
        }
    }

    [Theory]
    [InlineData(255, 0)]
    [InlineData(0, 255)]
    public void Soft_and_hard_edges_get_no_fringes(int ink, int ground)
    {
        // Transparent pixels carry the colour of the ground's opposite: none of it may leak in. A disc, 5 times too large.
        var part = new Layer(LayerKind.Pixel, "Disc", new StubLayerDetail()) { Bounds = Bounds.FromSize(0, 0, 1440, 1440) };
        var alpha = new byte[1440 * 1440];
        var color = new byte[alpha.Length];
        for (var i = 0; i < alpha.Length; i++)
        {
            var distance = Math.Sqrt(Math.Pow((i % 1440) - 719.5, 2) + Math.Pow((i / 1440) - 719.5, 2));
            alpha[i] = (byte)(255 * Math.Clamp((700 - distance) / 40, 0, 1));
            color[i] = (byte)(alpha[i] > 0 ? ink : ground);
        }

        part.Planes = [ModelBuilder.Raw(PlaneRole.Alpha, alpha), ModelBuilder.Raw(PlaneRole.Color0, color), ModelBuilder.Raw(PlaneRole.Color1, color), ModelBuilder.Raw(PlaneRole.Color2, color)];
        var file = new LayerFile("disc.psd", FileFormat.Psd, 1440, 1440, ColorMode.Rgb, 8, new StubFileDetail());
        file.Root.Append(part);
        var picture = Draw(file, new SheetOptions())[0].Picture!;
        Assert.Equal((288, 288), (picture.Width, picture.Height));
        for (var i = 0; i < picture.Pixels.Length; i += 4)
        {
            if (picture.Pixels[i + 3] != 0) Assert.Equal([(byte)ink, (byte)ink, (byte)ink], picture.Pixels[i..(i + 3)]);
        }

        // On the page: from the middle outwards the disc only ever turns into its ground, without a ring of anything beyond either.
        SheetWriter.Write(file, [part], Path.Combine(folder, "sheet.png"), new SheetOptions { Background = SheetBackground.Parse(ground == 0 ? "#000" : "#fff") }, TestContext.Current.CancellationToken);
        using var image = new MagickImage(Path.Combine(folder, "sheet.png"));
        using var pixels = image.GetPixels();
        var row = 48 + SheetStyle.Screen.HeaderHeight + 160;
        var line = Enumerable.Range(48 + 160, 158).Select(x => pixels.GetValue(x, row)![0]).ToList();
        Assert.Equal((ink, ground), (line[0], line[^1]));
        Assert.Equal(ink > ground ? line.OrderDescending() : line.Order(), line);
    }

    [Fact]
    public void Halves_are_light_and_dark_under_the_part()
    {
        var file = ModelBuilder.File(Plain("Faint", Bounds.FromSize(0, 0, 100, 100), 10, 10, 10, alpha: 0), ModelBuilder.Pixel("Nose"));
        file.Find("Faint").Planes[0] = ModelBuilder.Raw(PlaneRole.Alpha, [.. Enumerable.Repeat((byte)1, 10000)]);
        SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, "sheet.png"), new SheetOptions { Background = SheetBackground.Halves }, TestContext.Current.CancellationToken);
        using var image = new MagickImage(Path.Combine(folder, "sheet.png"));
        using var pixels = image.GetPixels();
        var y = 48 + SheetStyle.Screen.HeaderHeight + 20;
        Assert.Equal([0xe6, 0xe6, 0xe6], pixels.GetValue(48 + 100, y)!.Take(3));
        Assert.Equal([0x26, 0x26, 0x26], pixels.GetValue(48 + 220, y)!.Take(3));
    }

    [Theory]
    [InlineData("{File}", "hero.psd")]
    [InlineData("Second delivery, {date}: {Counts}", "Second delivery, 2026-05-04: 1 part")]
    [InlineData("{Canvas}", "100 \u00D7 60 px canvas")]
    [InlineData("a } b { c", "a } b { c")]
    public void A_title_is_filled_in(string title, string expected)
    {
        var heading = HeadingTemplate.Fill(title, "hero.psd", new DateTime(2026, 5, 4), "100 \u00D7 60 px canvas", "1 part", string.Empty);
        Assert.Equal(expected, heading.Title);
        Assert.Equal("2026-05-04 \u00B7 100 \u00D7 60 px canvas \u00B7 1 part", heading.Facts);
    }

    [Fact]
    public void Unknown_fields_and_sizes_are_refused_with_what_is_possible()
    {
        Assert.Contains("{File}, {Date}", Assert.Throws<SheetException>(() => HeadingTemplate.Fill("{Owner}", "", default, "", "", "")).Remedy, StringComparison.Ordinal);
        Assert.All(["A5", "", "100x100", "20000x1000", "1000", "-400x400", "400x4e2"], size => Assert.Contains("A4, A3", Assert.Throws<SheetException>(() => SheetPageSize.Parse(size)).Remedy, StringComparison.Ordinal));
        Assert.Throws<SheetException>(() => SheetGrid.Plan(3, new SheetOptions { PageSize = SheetPageSize.A4, Columns = 40 }, "sheet.png"));
        Assert.Throws<SheetException>(() => SheetGrid.Plan(3, new SheetOptions { PageSize = SheetPageSize.A4, Margin = 100 }, "sheet.png"));
    }

    private static SheetPlan Plan(SheetArrangement arrangement, params string[] names)
    {
        var file = Figure(names);
        return SheetPlan.OfLayers(file, [.. file.GetLayers()], new SheetOptions { Arrangement = arrangement });
    }

    private static LayerFile Figure(params string[] names) => ModelBuilder.File([.. names.Select(name => ModelBuilder.Pixel(name))]);

    private static Layer Plain(string name, Bounds bounds, byte red, byte green, byte blue, byte alpha = 255)
    {
        var layer = new Layer(LayerKind.Pixel, name, new StubLayerDetail()) { Bounds = bounds };
        byte[] values = [alpha, red, green, blue];
        layer.Planes = [.. values.Select((value, i) => ModelBuilder.Raw(i == 0 ? PlaneRole.Alpha : PlaneRole.Color0 + (i - 1), [.. Enumerable.Repeat(value, (int)bounds.Area)]))];
        return layer;
    }

    private static PageCell[] Draw(LayerFile file, SheetOptions options)
    {
        var plan = SheetPlan.OfLayers(file, [.. file.GetLayers()], options);
        using var pictures = new LayerPictures(file);
        var drawing = new CellDrawing(plan.Subjects, SheetGrid.Plan(plan.Subjects.Count, options, "sheet.png"), options, pictures);
        Assert.Null(drawing.PrepareFigure(CancellationToken.None));
        return drawing.Draw(0, CancellationToken.None);
    }
}
