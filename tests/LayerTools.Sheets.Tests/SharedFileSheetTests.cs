using LayerTools.Errors;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Tests.Support;

namespace LayerTools.Sheets.Tests;

public sealed class SharedFileSheetTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_file_that_can_be_read_gets_a_sheet()
    {
        var sheets = 0;
        foreach (var path in SharedFiles.All.Concat(SharedFiles.Damaged))
        {
            if (TryRead(path) is not { } file) continue;
            var result = SheetWriter.Write(file, [.. file.GetLayers()], Path.Combine(folder, $"{++sheets}.png"), new SheetOptions { CellSize = 64 }, TestContext.Current.CancellationToken);
            Assert.All(result.Paths, page => Assert.True(new FileInfo(page).Length > 0));
            Assert.True(result.Warnings.Count <= result.PartCount);
        }

        Assert.True(sheets >= 40, $"Only {sheets} files were read.");
    }

    private static LayerFile? TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayeredFileException)
        {
            return null;
        }
    }
}
