using LayerTools.Errors;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats;

public class FileAccessErrorsTests
{
    [Fact]
    public void A_file_where_a_folder_has_to_be_is_named()
    {
        using var folder = new TemporaryFolder();
        var inTheWay = folder["pages"];
        File.WriteAllText(inTheWay, "a file");

        var error = Assert.Throws<LayeredFileException>(() => FileAccessErrors.MakeFolderOf(Path.Combine(inTheWay, "hero", "1.png")));

        Assert.Contains($"'{inTheWay}' is a file", error.Message, StringComparison.Ordinal);
        Assert.Equal("a file", File.ReadAllText(inTheWay));
    }

    [Fact]
    public void Folders_are_made_and_may_be_there_already()
    {
        using var folder = new TemporaryFolder();
        var file = folder[Path.Combine("a", "b", "1.png")];

        FileAccessErrors.MakeFolderOf(file);
        FileAccessErrors.MakeFolderOf(file);

        Assert.True(Directory.Exists(Path.GetDirectoryName(file)));
    }
}
