namespace LayerTools.Benchmarks;

/// <summary>Where the drawn figures lie that everything is measured on.</summary>
internal static class FigureFiles
{
    /// <summary>Full path of the figure with that many layers.</summary>
    public static string Find(int layers)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var path = Path.Combine(folder.FullName, "out", "bench", $"figure-{layers}.psd");
            if (File.Exists(path)) return path;
        }

        throw new FileNotFoundException("The figures are not drawn yet: run ./build.ps1 bench once.");
    }
}
