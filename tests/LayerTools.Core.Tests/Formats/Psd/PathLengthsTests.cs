using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

public class PathLengthsTests
{
    [Fact]
    public void Paths_that_would_fill_the_memory_are_refused()
    {
        // A layer in the group repeats its name: 2 x 300,000 characters are more than a megabyte.
        var (group, layer, beside) = (ModelBuilder.Group(new string('g', 300_000)), ModelBuilder.Pixel("arm"), ModelBuilder.Pixel("leg"));
        var paths = new PathLengths("hero.psd", new ReadLimits { PathMegabytes = 1 });

        paths.Add(group, 0);
        var error = Assert.Throws<LayeredFileException>(() => paths.Add(layer, 1));
        var others = new PathLengths("hero.psd", new ReadLimits { PathMegabytes = 1 });
        others.Add(group, 0);
        others.Add(beside, 0);

        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
        Assert.Contains(nameof(ReadLimits.PathMegabytes), error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_a_file_counts_them()
    {
        var path = SharedFiles.Fixtures.First(fixture => Path.GetFileName(fixture) == "groups-nested.psd");

        var error = Assert.Throws<LayeredFileException>(() => LayerFiles.Read(path, new ReadLimits { PathMegabytes = 0 }));

        Assert.Equal(LayeredFileErrorKind.LimitExceeded, error.Kind);
    }
}
