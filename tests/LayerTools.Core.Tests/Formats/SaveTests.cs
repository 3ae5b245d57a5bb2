using System.Diagnostics;
using ImageMagick;
using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats;

/// <summary>A save writes all or nothing, and never touches an original that it was not told to replace.</summary>
public sealed class SaveTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly string source;

    public SaveTests()
    {
        source = folder["hero.psd"];
        LayerFiles.Save(LayerFiles.Create(source, new NewFileOptions { Width = 40, Height = 30, Skeleton = true }), source, new SaveOptions());
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_destination_leaves_the_source_alone_and_keeps_the_model_standing_for_it()
    {
        var before = File.ReadAllBytes(source);
        var file = Edited();
        var result = LayerFiles.Save(file, folder["copy.psd"], new SaveOptions());
        Assert.Equal((true, folder["copy.psd"]), (result.Written, result.Path));
        Assert.Equal(before, File.ReadAllBytes(source));
        Assert.Equal(source, file.Path);
        Assert.Equal(0, file.PendingCount);
        Assert.All(file.Changes, change => Assert.True(change.Saved));
        Assert.Equal("Neck", LayerFiles.Read(source).GetLayers().Single(layer => layer.Name is "Neck" or "Throat").Name);

        Assert.True(LayerFiles.Save(file, source, new SaveOptions { InPlace = true }).Written);
        Assert.Contains(LayerFiles.Read(source).GetLayers(), layer => layer.Name == "Throat");
    }

    [Fact]
    public void The_source_by_way_of_a_linked_folder_is_still_the_source()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need a right on Windows.");
        var links = Directory.CreateDirectory(folder["links"]).FullName;
        Directory.CreateSymbolicLink(Path.Combine(links, "link"), folder.Root);
        var before = File.ReadAllBytes(source);
        var linked = Path.Combine(links, "link", "hero.psd");
        var refused = Assert.Throws<LayeredFileException>(() => LayerFiles.Save(Edited(), linked, new SaveOptions { Force = true }));
        Assert.Equal(LayeredFileErrorKind.Unavailable, refused.Kind);
        Assert.Equal(before, File.ReadAllBytes(source));
        Assert.True(LayerFiles.Save(Edited(), linked, new SaveOptions { InPlace = true }).Written);
    }

    [Fact]
    public void A_name_as_long_as_the_disk_takes_can_be_written()
    {
        var path = folder[new string('n', 250) + ".psd"];
        LayerFiles.Save(Edited(), path, new SaveOptions());
        Assert.True(File.Exists(path));
    }

    [Fact]
    public void A_vector_mask_of_thousands_of_points_is_reflected_and_moved()
    {
        const int Points = 3_000;
        const int RecordLength = 26;
        var data = new byte[8 + (RecordLength * Points)];
        for (var start = 8; start < data.Length; start += RecordLength) data[start + 1] = 1;
        var file = LayerFiles.Create(folder["mask.psd"], new NewFileOptions { Width = 40, Height = 30 });
        var layer = file.GetLayers().First(candidate => candidate.Kind == LayerKind.Pixel);
        layer.Name = "Arm L";
        LayerFiles.Save(file, folder["mask.psd"], new SaveOptions());
        var detail = (PsdLayerDetail)layer.Detail;
        detail.Record = detail.Record with { Blocks = [.. detail.Record.Blocks, new PsdBlock("vmsk", data)] };
        LayerFiles.Save(file, folder["masked.psd"], new SaveOptions());

        file = LayerFiles.Read(folder["masked.psd"]);
        new MirrorEdit { From = Side.Left }.Plan(file, [.. file.GetLayers()]).Apply();
        new CanvasEdit { Shift = (0, 15) }.Plan(file, [.. file.GetLayers()]).Apply();
        LayerFiles.Save(file, folder["moved.psd"], new SaveOptions());

        var copy = LayerFiles.Read(folder["moved.psd"]).GetLayers().Single(candidate => candidate.Name == "Arm R");
        var last = ((PsdLayerDetail)copy.Detail).Record.GetData("vmsk").Slice(data.Length - RecordLength + 2, 8);
        // y = 15 of 30 px, x = the right edge, both in 8.24 fixed point.
        Assert.Equal([0, 0x80, 0, 0, 1, 0, 0, 0], last.ToArray());
    }

    [Fact]
    public void A_new_name_takes_the_place_of_a_unicode_name_that_cannot_be_read()
    {
        var file = LayerFiles.Read(source);
        var layer = file.GetLayers().First(candidate => candidate.Name == "Neck");
        var detail = (PsdLayerDetail)layer.Detail;
        detail.Record = detail.Record with { LegacyName = "Neck"u8.ToArray(), LegacyNamePadding = new byte[3], Blocks = [.. detail.Record.Blocks.Where(block => block.Key != PsdKey.Parse("luni")), new PsdBlock("luni", [0, 0, 0, 99])] };
        LayerFiles.Save(file, folder["broken.psd"], new SaveOptions());

        file = LayerFiles.Read(folder["broken.psd"]);
        Rename(file, file.GetLayers().First(candidate => candidate.Name == "Neck"), "首");
        LayerFiles.Save(file, folder["broken.psd"], new SaveOptions { InPlace = true });
        Assert.Contains(LayerFiles.Read(folder["broken.psd"]).GetLayers(), candidate => candidate.Name == "首");
    }

    [Fact]
    public void A_group_end_without_a_group_does_not_end_the_group_that_its_neighbour_is_moved_into()
    {
        var stray = SharedFiles.Fixtures.Single(path => Path.GetFileName(path) == "groups-missing-opener.psd");
        var file = LayerFiles.Read(stray);
        Assert.Contains(file.GetChildren(), layer => layer.Detail is PsdLayerDetail { StraysBehind.Count: > 0 });
        new NewGroupEdit("All").Plan(file, [.. file.GetLayers()]).Apply();
        var names = file.GetLayers().Select(layer => layer.LayerPath).ToList();
        LayerFiles.Save(file, folder["grouped.psd"], new SaveOptions());
        var written = LayerFiles.Read(folder["grouped.psd"]);
        Assert.Equal(names, written.GetLayers().Select(layer => layer.LayerPath));
        Assert.NotEmpty(written.Warnings);
    }

    [Fact]
    public void In_place_saves_can_be_repeated_and_do_nothing_without_edits()
    {
        var file = LayerFiles.Read(source);
        var time = File.GetLastWriteTimeUtc(source);
        Assert.False(LayerFiles.Save(file, source, new SaveOptions { InPlace = true }).Written);
        Assert.Equal(time, File.GetLastWriteTimeUtc(source));

        foreach (var name in new[] { "Throat", "Neck again" })
        {
            Rename(file, file.GetLayers().First(layer => layer.Name.StartsWith("Neck", StringComparison.Ordinal) || layer.Name == "Throat"), name);
            Assert.True(LayerFiles.Save(file, source, new SaveOptions { InPlace = true }).Written);
            Assert.Contains(LayerFiles.Read(source).GetLayers(), layer => layer.Name == name);
            Assert.Equal((source, "hero.psd"), (file.Path, file.Name));
            Assert.All(file.GetLayers(), layer => Assert.Equal(source, layer.FilePath));
        }

        Assert.Single(Directory.GetFiles(folder.Root));
    }

    [Fact]
    public void The_second_model_of_a_path_cannot_be_saved_over_the_first()
    {
        var (first, second) = (Edited(), Edited());
        LayerFiles.Save(first, source, new SaveOptions { InPlace = true });
        var written = File.ReadAllBytes(source);
        AssertRefused(LayeredFileErrorKind.SourceChanged, () => LayerFiles.Save(second, source, new SaveOptions { InPlace = true }));
        AssertRefused(LayeredFileErrorKind.SourceChanged, () => LayerFiles.Save(second, folder["copy.psd"], new SaveOptions { Force = true }));
        AssertRefused(LayeredFileErrorKind.SourceChanged, () => new PixelReader(second).ReadPlane(second.GetLayers().Last(), PlaneRole.Alpha));
        Assert.Equal(written, File.ReadAllBytes(source));
    }

    /// <summary>Even a change that keeps length and time is noticed in what is not pixels.</summary>
    [Fact]
    public void A_source_that_changed_with_the_same_length_and_time_is_refused()
    {
        var file = Edited();
        var time = File.GetLastWriteTimeUtc(source);
        using (var stream = File.OpenWrite(source))
        {
            stream.Position = 60;
            stream.WriteByte(0x55);
        }

        File.SetLastWriteTimeUtc(source, time);
        AssertRefused(LayeredFileErrorKind.SourceChanged, () => LayerFiles.Save(file, folder["copy.psd"], new SaveOptions()));
    }

    [Fact]
    public void An_existing_destination_needs_force()
    {
        File.WriteAllText(folder["copy.psd"], "precious");
        AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Save(Edited(), folder["copy.psd"], new SaveOptions()));
        Assert.Equal("precious", File.ReadAllText(folder["copy.psd"]));
        LayerFiles.Save(Edited(), folder["copy.psd"], new SaveOptions { Force = true });
        Assert.NotEmpty(LayerFiles.Read(folder["copy.psd"]).GetLayers());
    }

    [Fact]
    public void The_source_as_destination_needs_in_place_even_with_force() =>
        AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Save(Edited(), source, new SaveOptions { Force = true }));

    [Fact]
    public void Where_no_backup_can_be_made_nothing_is_replaced_and_nothing_left()
    {
        var before = File.ReadAllBytes(source);
        File.WriteAllText(folder["taken"], "no folder");

        Assert.Throws<LayeredFileException>(() => LayerFiles.Save(Edited(), source, new SaveOptions { InPlace = true, BackupFolder = folder["taken"] }));

        Assert.Equal(before, File.ReadAllBytes(source));
        Assert.Equal(["hero.psd", "taken"], Directory.GetFileSystemEntries(folder.Root).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void A_backup_is_the_original_byte_for_byte()
    {
        var before = File.ReadAllBytes(source);
        LayerFiles.Save(Edited(), source, new SaveOptions { InPlace = true, BackupFolder = folder["backup"] });
        Assert.Equal(before, File.ReadAllBytes(Assert.Single(Directory.GetFiles(folder["backup"]))));
    }

    [Fact]
    public void A_link_is_written_through_or_refused()
    {
        var link = folder["link.psd"];
        try
        {
            File.CreateSymbolicLink(link, source);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            Assert.Skip($"Links cannot be made here: {error.Message}");
        }

        var file = LayerFiles.Read(link);
        Rename(file, file.GetLayers().Single(layer => layer.Name == "Neck"), "Throat");
#if NETSTANDARD_BUILD
        AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Save(file, link, new SaveOptions { InPlace = true }));
#else
        LayerFiles.Save(file, link, new SaveOptions { InPlace = true });
        Assert.NotNull(new FileInfo(link).LinkTarget);
        Assert.Contains(LayerFiles.Read(source).GetLayers(), layer => layer.Name == "Throat");
#endif
    }

    [Fact]
    public void Missing_files_folders_and_files_in_use_are_told_with_their_path()
    {
        AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Read(folder["missing.psd"]));
        AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Read(folder.Root));
        using var other = new FileStream(source, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Read(source));
    }

    [Fact]
    public void Without_permission_nothing_is_written()
    {
        var locked = Directory.CreateDirectory(folder["locked"]).FullName;
        // Permissions do not bind root; a folder that nobody can change does.
        if (!OperatingSystem.IsLinux() || !Run("chattr", "+i", locked)) Assert.Skip("A folder cannot be locked here.");
        try
        {
            AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Save(Edited(), Path.Combine(locked, "copy.psd"), new SaveOptions()));
        }
        finally
        {
            Run("chattr", "-i", locked);
        }
    }

    [Fact]
    public void A_full_disk_leaves_the_original_and_no_remains()
    {
        var disk = Directory.CreateDirectory(folder["disk"]).FullName;
        if (!OperatingSystem.IsLinux() || !Run("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk)) Assert.Skip("A small disk cannot be mounted here.");
        try
        {
            var path = Path.Combine(disk, "hero.psd");
            File.Copy(source, path);
            File.WriteAllBytes(Path.Combine(disk, "filler"), new byte[(64 << 10) - (int)new FileInfo(path).Length - (12 << 10)]);
            var before = File.ReadAllBytes(path);
            var file = LayerFiles.Read(path);
            foreach (var layer in file.GetLayers().ToList()) Rename(file, layer, layer.Name + new string('x', 200));
            var error = AssertRefused(LayeredFileErrorKind.Unavailable, () => LayerFiles.Save(file, path, new SaveOptions { InPlace = true }));
            Assert.Contains("full", error.Message);
            Assert.Equal(before, File.ReadAllBytes(path));
            Assert.Equal(["filler", "hero.psd"], Directory.GetFiles(disk).Select(Path.GetFileName).Order());
        }
        finally
        {
            Run("umount", disk);
        }
    }

    /// <summary>The redrawn picture as Magick.NET reads it, against the layers that are left.</summary>
    [Fact]
    public void A_visible_edit_redraws_the_merged_picture_and_the_thumbnail()
    {
        var path = folder["edited.psd"];
        var file = LayerFiles.Read(source);
        var backdrop = file.GetLayers().Single(layer => layer.Name == "Backdrop");
        new SetLayerEdit { Opacity = 50 }.Plan(file, [backdrop]).Apply();
        Assert.Empty(LayerFiles.Save(file, path, new SaveOptions()).Warnings);
        using var merged = new MagickImage(path);
        using var pixels = merged.GetPixels();
        // 119 at 128/255 over white: 119·0.50196 + 255·0.49804 = 186.7
        Assert.Equal(187, pixels.GetPixel(5, 5).GetChannel(0), 1.0);
    }

    [Fact]
    public void A_canvas_edit_moves_pixels_and_picture_together()
    {
        var file = LayerFiles.Read(source);
        new CanvasEdit { Width = 50, Height = 30, Shift = (6, 0) }.Plan(file, []).Apply();
        LayerFiles.Save(file, folder["moved.psd"], new SaveOptions());
        using var merged = new MagickImage(folder["moved.psd"]);
        Assert.Equal((50u, 30u), (merged.Width, merged.Height));
        using var pixels = merged.GetPixels();
        Assert.Equal([255, 255, 119, 119, 255], new[] { 0, 5, 6, 45, 46 }.Select(x => (int)pixels.GetPixel(x, 10).GetChannel(0)));
        Assert.Equal(26.0, LayerFiles.Read(folder["moved.psd"]).Guides[0].Position);
    }

    /// <summary>What the reader would refuse is refused by the edit, not by the check after writing.</summary>
    [Fact]
    public void Edits_do_not_move_layers_beyond_what_can_be_read_again()
    {
        var file = LayerFiles.Read(source);
        file.Guides = [];
        AssertRefused(LayeredFileErrorKind.EditRefused, () => new CanvasEdit { Shift = (CanvasLimits.Farthest + 1, 0) }.Plan(file, []));
        Rename(file, file.GetLayers().Single(layer => layer.Name == "Backdrop"), "Board L");
        AssertRefused(LayeredFileErrorKind.EditRefused, () => new MirrorEdit { Axis = CanvasLimits.Farthest }.Plan(file, [.. file.GetLayers()]));
        new CanvasEdit { Shift = (CanvasLimits.Farthest, 0) }.Plan(file, []).Apply();
        LayerFiles.Save(file, folder["far.psd"], new SaveOptions());
        Assert.Equal(CanvasLimits.Farthest, LayerFiles.Read(folder["far.psd"]).GetLayers().Single(layer => layer.Name == "Board L").Left);
    }

    /// <summary>A flat file has nothing but its merged picture, which moves pixel by pixel in every depth and packing.</summary>
    [Fact]
    public void A_flat_file_keeps_its_picture_through_a_move_there_and_back()
    {
        using var opened = new OpenedSources();
        var compared = 0;
        foreach (var path in SharedFiles.Fixtures)
        {
            var original = LayerFiles.Read(path);
            if (original.LayerCount > 0) continue;
            Recanvas(path, folder["wide.psd"], original.Width + 9, original.Height + 4, (5, 3));
            Recanvas(folder["wide.psd"], folder["back.psd"], original.Width, original.Height, (-5, -3));
            var (before, after) = (ReadPicture(original, opened), ReadPicture(LayerFiles.Read(folder["back.psd"]), opened));
            Assert.Equal(before, after);
            compared++;
        }

        Assert.InRange(compared, 3, 100);
    }

    private static byte[] ReadPicture(LayerFile file, OpenedSources opened)
    {
        var detail = (LayerTools.Formats.Psd.PsdFileDetail)file.Detail;
        var picture = new LayerTools.Formats.Psd.StoredPicture(detail, opened, file.Path);
        var bytes = new List<byte>();
        var row = new byte[picture.RowBytes];
        for (var channel = 0; channel < detail.Header.Channels; channel++)
        {
            var rows = picture.OpenChannel(channel);
            for (var y = 0; y < file.Height; y++)
            {
                rows.ReadRow(row);
                if (file.BitDepth == 1 && file.Width % 8 != 0) row[^1] &= (byte)(0xff << (8 - (file.Width % 8)));
                bytes.AddRange(row);
            }
        }

        return [.. bytes];
    }

    private static void Recanvas(string from, string to, int width, int height, (int, int) shift)
    {
        var file = LayerFiles.Read(from);
        new CanvasEdit { Width = width, Height = height, Shift = shift }.Plan(file, []).Apply();
        LayerFiles.Save(file, to, new SaveOptions { Force = true });
    }

    private LayerFile Edited()
    {
        var file = LayerFiles.Read(source);
        Rename(file, file.GetLayers().Single(layer => layer.Name == "Neck"), "Throat");
        return file;
    }

    private static void Rename(LayerFile file, Layer layer, string name)
    {
        var old = layer.Name;
        layer.Name = name;
        file.Record(new Change(layer.LayerNumber, layer.Id, layer.LayerPath, nameof(Layer.Name), old, name));
    }

    private LayeredFileException AssertRefused(LayeredFileErrorKind kind, Action action)
    {
        var files = Directory.GetFiles(folder.Root).Order().ToList();
        var error = Assert.Throws<LayeredFileException>(action);
        Assert.Equal(kind, error.Kind);
        Assert.NotNull(error.Path);
        Assert.Equal(files, Directory.GetFiles(folder.Root).Order());
        return error;
    }

    private static bool Run(string command, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardError = true });
        process!.WaitForExit();
        return process.ExitCode == 0;
    }
}
