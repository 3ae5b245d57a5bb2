using LayerTools.Sheets.Rendering;

namespace LayerTools.Sheets.Tests.Rendering;

public class NativeLibrariesTests
{
    public static TheoryData<Exception, string> Missing => new()
    {
        { new DllNotFoundException("Unable to load shared library 'libSkiaSharp' or one of its dependencies."), "SkiaSharp" },
        { new TypeInitializationException("SkiaSharp.SKImageInfo", new InvalidOperationException("The version of the native library is incompatible.")), "SkiaSharp" },
        { new TypeInitializationException("HarfBuzzSharp.Buffer", new DllNotFoundException("libHarfBuzzSharp")), "HarfBuzzSharp" },
        { new FileNotFoundException("Could not load file or assembly.", "SkiaSharp, Version=4.0.0.0"), "SkiaSharp" },
        { new BadImageFormatException("An attempt was made to load a program with an incorrect format."), "of native code" },
    };

    [Theory]
    [MemberData(nameof(Missing))]
    public void A_missing_library_is_named_with_what_to_do(Exception inner, string name)
    {
        var error = Assert.Throws<SheetException>(() => NativeLibraries.Guard<int>("sheet.png", () => throw inner));
        Assert.Contains(name, error.Problem, StringComparison.Ordinal);
        Assert.Contains("Install the module again", error.Remedy, StringComparison.Ordinal);
        if (name != "of native code") Assert.Contains($"{name}.NativeAssets.", error.Remedy, StringComparison.Ordinal);
        Assert.Same(inner, error.InnerException);
    }

    [Fact]
    public void Other_errors_pass()
    {
        Assert.Throws<FileNotFoundException>(() => NativeLibraries.Guard<int>("sheet.png", () => throw new FileNotFoundException("no", "hero.psd")));
        Assert.Throws<TypeInitializationException>(() => NativeLibraries.Guard<int>("sheet.png", () => throw new TypeInitializationException("Other", null)));
        Assert.Equal(3, NativeLibraries.Guard("sheet.png", () => 3));
    }
}
