using LayerTools.Edits;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits;

/// <summary>Makes sure that an edit is refused and that nothing changes.</summary>
internal static class Refused
{
    public static LayeredFileException Plan(LayerFile file, LayerEdit edit, params Layer[] layers)
    {
        var before = file.Sketch();
        var error = Assert.Throws<LayeredFileException>(() => edit.Plan(file, layers));
        Assert.Equal(LayeredFileErrorKind.EditRefused, error.Kind);
        Assert.NotEmpty(error.Remedy);
        Assert.Contains("nothing has changed", error.Message);
        Assert.StartsWith(file.Path, error.Message);
        Assert.Equal(before, file.Sketch());
        Assert.Empty(file.Changes);
        Assert.False(file.IsPictureStale);
        return error;
    }
}
