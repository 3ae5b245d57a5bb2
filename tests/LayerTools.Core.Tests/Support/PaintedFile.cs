using LayerTools.Formats;
using LayerTools.Model;

namespace LayerTools.Tests.Support;

/// <summary>Figures that went through the writer and were read again.</summary>
internal static class PaintedFile
{
    /// <summary>A blank file with a backdrop and a centre guide, and paintings in front of it, front to back.</summary>
    public static LayerFile Save(TemporaryFolder folder, string name, int width, int height, params Painting[] parts)
    {
        var file = LayerFiles.Create(folder[name], new NewFileOptions { Width = width, Height = height });
        for (var i = 0; i < parts.Length; i++)
        {
            var layer = parts[i].ToLayer(file);
            layer.Id = file.CreateId();
            file.Root.Insert(i, layer);
        }

        file.Renumber();
        LayerFiles.Save(file, file.Path, new SaveOptions());
        return LayerFiles.Read(file.Path);
    }
}
