using System.Diagnostics;
using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>What is no ordinary file ends in an error, not in waiting.</summary>
public sealed class SpecialFileTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_pipe_with_the_name_of_a_file_is_refused_at_once()
    {
        if (OperatingSystem.IsWindows()) Assert.Skip("Windows keeps pipes out of folders.");
        var path = folder["hero.psd"];
        using (var maker = Process.Start("mkfifo", [path])) await maker.WaitForExitAsync(TestContext.Current.CancellationToken);

        var reading = Task.Run(() => LayerFiles.Read(path), TestContext.Current.CancellationToken);

        var error = await Assert.ThrowsAsync<LayeredFileException>(() => reading.WaitAsync(TimeSpan.FromSeconds(10), TestContext.Current.CancellationToken));
        Assert.Equal(LayeredFileErrorKind.NotALayeredFile, error.Kind);
    }
}
