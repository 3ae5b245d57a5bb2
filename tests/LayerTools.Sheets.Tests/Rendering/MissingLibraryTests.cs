using System.Reflection;
using System.Runtime.Loader;

namespace LayerTools.Sheets.Tests.Rendering;

[CollectionDefinition(nameof(MissingLibraryTests), DisableParallelization = true)]
public class MissingLibraryCollection;

/// <summary>Runs the sheet writer in a load context that lacks a library, as on a machine where the module was not installed whole.</summary>
[Collection(nameof(MissingLibraryTests))]
public class MissingLibraryTests
{
    [Theory]
    [InlineData("SkiaSharp", false)]
    [InlineData("SkiaSharp", true)]
    [InlineData("HarfBuzzSharp", false)]
    [InlineData("HarfBuzzSharp", true)]
    public void The_library_is_named_and_the_file_can_still_be_read(string library, bool onlyItsNativePart)
    {
        var context = new ContextWithout(library, onlyItsNativePart);
        var core = context.LoadFromAssemblyName(new AssemblyName("LayerTools.Core"));
        var options = Activator.CreateInstance(core.GetType("LayerTools.Formats.NewFileOptions", throwOnError: true)!)!;
        var file = core.GetType("LayerTools.Formats.LayerFiles", throwOnError: true)!.GetMethod("Create")!.Invoke(null, ["hero.psd", options])!;
        Assert.Equal(5000, file.GetType().GetProperty("Width")!.GetValue(file));

        var sheets = context.LoadFromAssemblyName(new AssemblyName("LayerTools.Sheets"));
        var sheetOptions = Activator.CreateInstance(sheets.GetType("LayerTools.Sheets.SheetOptions", throwOnError: true)!)!;
        var layers = Array.CreateInstance(core.GetType("LayerTools.Model.Layer", throwOnError: true)!, 0);
        var path = Path.Combine(Path.GetTempPath(), $"layertools-{Guid.NewGuid():N}.png");
        var write = sheets.GetType("LayerTools.Sheets.SheetWriter", throwOnError: true)!.GetMethod("Write")!;
        var error = Assert.Throws<TargetInvocationException>(() => write.Invoke(null, [file, layers, path, sheetOptions, CancellationToken.None])).InnerException!;
        Assert.Equal(nameof(SheetException), error.GetType().Name);
        Assert.Contains(library, error.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(path));
    }

    private sealed class ContextWithout(string library, bool onlyItsNativePart) : AssemblyLoadContext(name: $"without {library}")
    {
        protected override Assembly? Load(AssemblyName assemblyName)
        {
            var path = Path.Combine(AppContext.BaseDirectory, $"{assemblyName.Name}.dll");
            if (assemblyName.Name == library && !onlyItsNativePart) throw new FileNotFoundException("Taken away by the test.", assemblyName.FullName);
            return assemblyName.Name!.StartsWith("System", StringComparison.Ordinal) || !File.Exists(path) ? null : LoadFromAssemblyPath(path);
        }

        protected override IntPtr LoadUnmanagedDll(string unmanagedDllName) =>
            unmanagedDllName == $"lib{library}" ? throw new DllNotFoundException($"{unmanagedDllName} was taken away by the test.") : IntPtr.Zero;
    }
}
