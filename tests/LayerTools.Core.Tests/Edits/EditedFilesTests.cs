using LayerTools.Edits;
using LayerTools.Formats;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;
using static LayerTools.Tests.Support.ModelBuilder;

namespace LayerTools.Tests.Edits;

/// <summary>Edits of files of every kind survive a save: what is read back is what the model said.</summary>
public sealed class EditedFilesTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public static TheoryData<string> Fixtures => [.. SharedFiles.Fixtures];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Fixtures))]
    public void The_stack_is_read_back(string path)
    {
        var file = LayerFiles.Read(path);
        if (file.LayerCount == 0) return;
        var all = file.GetLayers().ToList();
        new NewGroupEdit("新しい group") { AllowDuplicate = true }.Plan(file, [all[^1], all[all.Count / 2]]).Apply();
        var group = file.GetLayers().Single(layer => layer.Name == "新しい group");
        new MoveEdit(MovePlace.Into, group).Plan(file, [.. file.GetChildren().Where(layer => !Selection.IsIn(group, layer)).Take(1)]).Apply();
        new SetLayerEdit { Mark = Mark.Violet, Visible = false, Opacity = 40 }.Plan(file, [.. file.GetLayers().Where((_, i) => i % 2 == 0)]).Apply();
        if (all.Count > 2) new RemoveEdit().Plan(file, [file.GetLayers().Last()]).Apply();

        AssertReadBack(file, path);
    }

    [Theory]
    [MemberData(nameof(Fixtures))]
    public void The_canvas_is_read_back(string path)
    {
        var file = LayerFiles.Read(path);

        new CanvasEdit { Width = file.Width + 3, Height = file.Height + 2, Shift = (2, -1) }.Plan(file, []).Apply();

        AssertReadBack(file, path);
    }

    [Theory]
    [MemberData(nameof(Fixtures))]
    public void The_size_is_read_back(string path)
    {
        var file = LayerFiles.Read(path);
        if (file.BitDepth == 1 || file.ColorMode == ColorMode.Indexed) return;

        new ResizeEdit { Percent = 60 }.Plan(file, []).Apply();

        AssertReadBack(file, path);
    }

    private void AssertReadBack(LayerFile file, string path)
    {
        LayerFiles.Save(file, folder[Path.GetFileName(path)], new SaveOptions());
        var again = LayerFiles.Read(folder[Path.GetFileName(path)]);
        Assert.Equal(file.Sketch(), again.Sketch());
        Assert.Equal((file.Width, file.Height), (again.Width, again.Height));
        Assert.Equal(file.Guides, again.Guides);
        Assert.Equal(file.GetLayers().Select(Describe), again.GetLayers().Select(Describe));
    }

    private static (int? Id, Bounds Bounds, Bounds? Mask, Mark Mark, bool Visible, byte Opacity, BlendMode Blend) Describe(Layer layer) =>
        (layer.Id, layer.IsGroup ? Bounds.Empty : layer.Bounds, layer.Mask?.Bounds, layer.Mark, layer.Visible, layer.OpacityByte, layer.BlendMode);
}
