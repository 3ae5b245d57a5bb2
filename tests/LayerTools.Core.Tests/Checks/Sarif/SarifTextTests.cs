using LayerTools.Checks.Sarif;
using Xunit;

namespace LayerTools.Tests.Checks.Sarif;

public class SarifTextTests
{
    [Theory]
    [InlineData("The arm.", "The arm.")]
    [InlineData("'{0}'", "'{{0}}'")]
    [InlineData("'arm [left]'", "'arm [left]'")]
    [InlineData("'[arm](1)'", "'\\[arm\\](1)'")]
    [InlineData("a\nb", "a\u240Ab")]
    public void Text_reads_as_it_stands(string text, string written) => Assert.Equal(written, SarifText.Of(text));

    [Fact]
    public void A_path_becomes_a_uri()
    {
        Assert.SkipWhen(Path.DirectorySeparatorChar == '\\', "Paths of other systems.");
        Assert.Equal("file:///home/nora/a%20b/100%25%3F.psd", SarifUri.Absolute("/home/nora/a b/100%?.psd"));
        Assert.Equal("file:///home/nora/", SarifUri.AbsoluteFolder("/home/nora"));
        Assert.Equal("file:///", SarifUri.AbsoluteFolder("/"));
        Assert.Equal("nora/hero.psd", SarifUri.RelativeTo("/home", "/home/nora/hero.psd"));
        Assert.Equal("hero.psd", SarifUri.RelativeTo("/", "/hero.psd"));
        Assert.Null(SarifUri.RelativeTo("/home/no", "/home/nora/hero.psd"));
    }
}
