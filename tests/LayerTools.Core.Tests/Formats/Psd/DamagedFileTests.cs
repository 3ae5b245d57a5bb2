using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>Damage is told in the family of layered-file errors, with file, place and remedy, and never in any other way.</summary>
public sealed class DamagedFileTests
{
    /// <summary>Rows of damaged/README.md: file, when, section, kind, what is wrong.</summary>
    public static TheoryData<string, string, string> Table()
    {
        var table = new TheoryData<string, string, string>();
        var folder = Path.GetDirectoryName(SharedFiles.Damaged[0])!;
        foreach (var cells in File.ReadLines(Path.Combine(folder, "README.md")).Select(line => line.Split('|', StringSplitOptions.TrimEntries)))
        {
            if (cells.Length == 7 && File.Exists(Path.Combine(folder, cells[1]))) table.Add(cells[1], cells[2], cells[4]);
        }

        return table;
    }

    [Fact]
    public void Every_damaged_fixture_is_in_the_table() =>
        Assert.Equal(SharedFiles.Damaged.Select(Path.GetFileName).Order(), Table().Select(row => row.Data.Item1).Order());

    [Theory]
    [MemberData(nameof(Table))]
    public void Damage_is_told_as_the_table_says(string name, string when, string kind)
    {
        var path = SharedFiles.Damaged.Single(path => Path.GetFileName(path) == name);
        var (error, warnings) = ReadEverything(path);
        if (error is null)
        {
            Assert.True(when is "never" or "merged" || (kind.Contains("warning") && warnings > 0), $"{name} was read without an error");
            return;
        }

        Assert.Contains(Path.GetFileName(path), error.Message);
        Assert.True(error.Section.Length > 0 && error.Remedy.Length > 0);
        if (when != "never") Assert.Contains(error.Kind.ToString(), kind.Replace("NotSupported", "NotSupported Damaged"));
    }

    [Theory]
    [InlineData("groups-nested.psd")]
    [InlineData("mask-real-and-parameters.psd")]
    public void A_file_cut_at_any_byte_is_an_error(string preferred)
    {
        var source = SharedFiles.Fixtures.FirstOrDefault(path => Path.GetFileName(path) == preferred) ?? SharedFiles.Fixtures.OrderBy(path => new FileInfo(path).Length).First(path => LayerFiles.Read(path).LayerCount > 1);
        var bytes = File.ReadAllBytes(source);
        using var folder = new TemporaryFolder();
        for (var length = 0; length < bytes.Length; length++)
        {
            File.WriteAllBytes(folder["cut.psd"], bytes.AsSpan(0, length));
            var error = Assert.ThrowsAny<LayeredFileException>(() => LayerFiles.Read(folder["cut.psd"]));
            Assert.Contains(error.Kind, new[] { LayeredFileErrorKind.Truncated, LayeredFileErrorKind.Damaged, LayeredFileErrorKind.NotALayeredFile });
            Assert.InRange(error.Offset, 0, length);
        }
    }

    /// <summary>Bytes are changed at random, with fixed seeds: the reader may refuse or not, but only in its own family of errors.</summary>
    [Fact]
    public void Random_damage_never_escapes_as_another_exception()
    {
        using var folder = new TemporaryFolder();
        var random = new Random(20240607);
        foreach (var path in SharedFiles.Fixtures)
        {
            var original = File.ReadAllBytes(path);
            for (var round = 0; round < 12; round++)
            {
                var bytes = (byte[])original.Clone();
                for (var change = random.Next(1, 6); change > 0; change--)
                {
                    bytes[random.Next(bytes.Length)] = random.Next(3) switch { 0 => 0xff, 1 => 0x80, _ => (byte)random.Next(256) };
                }

                File.WriteAllBytes(folder["changed.psd"], bytes);
                ReadEverything(folder["changed.psd"]);
            }
        }
    }

    private static (LayeredFileException? Error, int Warnings) ReadEverything(string path)
    {
        try
        {
            var file = LayerFiles.Read(path);
            using var reader = new PixelReader(file, new ReadLimits { MemoryMegabytes = 64 });
            foreach (var (layer, plane) in file.GetLayers().SelectMany(layer => layer.Planes.Select(plane => (layer, plane)))) reader.ReadPlane(layer, plane.Role);
            return (null, file.Warnings.Count);
        }
        catch (LayeredFileException error)
        {
            return (error, 0);
        }
    }
}
