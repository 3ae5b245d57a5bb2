using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests.Model;

public class SpoolFileTests
{
    [Fact]
    public void What_is_too_much_for_memory_is_kept_and_leaves_no_named_file_behind()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows removes the file when it is closed.");
        var started = DateTime.UtcNow;
        using var spool = new SpoolFile();
        var bytes = new byte[5 << 20];
        bytes[bytes.Length - 1] = 7;
        var kept = spool.Add(bytes);
        var last = new byte[1];
        using var opened = new OpenedSources();
        kept.Read(bytes.Length - 1, last, opened);
        Assert.Equal(7, last[0]);
        Assert.DoesNotContain(Directory.GetFiles(Path.GetTempPath(), "layertools-*.tmp"), path => File.GetLastWriteTimeUtc(path) >= started);
    }
}
