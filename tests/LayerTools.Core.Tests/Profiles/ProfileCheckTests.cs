using System.Globalization;
using LayerTools.Checks;
using LayerTools.Errors;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Profiles;

public sealed class ProfileCheckTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(ProfileTexts.Good), MemberType = typeof(ProfileTexts))]
    public void What_is_right_is_taken(string text)
    {
        Assert.Empty(Check(text));
        Assert.NotEmpty(LayerProfiles.Read(folder["a.layerprofile.json"]).Name);
    }

    [Theory]
    [MemberData(nameof(ProfileTexts.BadText), MemberType = typeof(ProfileTexts))]
    [MemberData(nameof(ProfileTexts.BadForm), MemberType = typeof(ProfileTexts))]
    [MemberData(nameof(ProfileTexts.BadSense), MemberType = typeof(ProfileTexts))]
    public void What_is_wrong_is_told_with_its_place(string text, string jsonPath, int line, int column, string message, string remedy)
    {
        var finding = Assert.Single(Check(text));
        Assert.Equal(Severity.Error, finding.Severity);
        AssertSays(finding, jsonPath, line, column, message, remedy);
        var error = Assert.Throws<ProfileException>(() => LayerProfiles.Read(folder["a.layerprofile.json"]));
        Assert.Equal(LayeredFileErrorKind.BadProfile, error.Kind);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"a.layerprofile.json: {jsonPath}, line {line}, column {column}: "), error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(ProfileTexts.Doubtful), MemberType = typeof(ProfileTexts))]
    public void What_is_doubtful_is_told_and_taken(string text, string jsonPath, int line, int column, string message, string remedy)
    {
        var finding = Assert.Single(Check(text));
        Assert.Equal(Severity.Warning, finding.Severity);
        AssertSays(finding, jsonPath, line, column, message, remedy);
        Assert.NotNull(LayerProfiles.Read(folder["a.layerprofile.json"]));
    }

    [Fact]
    public void All_errors_are_told_in_the_order_of_the_text()
    {
        var findings = Check("{ \"rules\": { \"A\": 1 },\n \"canvas\": { \"height\": 0, \"x\": 1 },\n \"name\": 7 }");
        Assert.Equal(["$.rules.A", "$.canvas.height", "$.canvas.x", "$.name"], findings.Select(finding => finding.JsonPath));
        Assert.Contains("Errors in all: 4", Assert.Throws<ProfileException>(() => LayerProfiles.Read(folder["a.layerprofile.json"])).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ja-JP")]
    public void Culture_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Empty(Check("""{ "name": "i", "canvas": { "ppi": 72.5 }, "naming": { "case": "title" }, "textures": { "turn": true } }"""));
            Assert.Equal(72.5, LayerProfiles.Read(folder["a.layerprofile.json"]).Canvas.Ppi);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Deep_nesting_is_refused() => Assert.Contains("depth", Assert.Single(Check(new string('[', 100_000))).Message, StringComparison.Ordinal);

    [Fact]
    public void Very_many_values_are_refused() => Assert.Contains("more than 100000 values", Assert.Single(Check($"[{string.Concat(Enumerable.Repeat("0,", 100_001))}0]")).Message, StringComparison.Ordinal);

    [Fact]
    public void Many_errors_are_cut_off() => Assert.Equal(100, Check($$"""{ "name": "a", "stack": [ {{string.Join(",", Enumerable.Repeat("0", 40_000))}} ] }""").Count);

    [Fact]
    public void A_large_file_is_refused()
    {
        File.WriteAllText(folder["a.layerprofile.json"], new string(' ', (1 << 20) + 1));
        Assert.Equal(LayeredFileErrorKind.LimitExceeded, Assert.Throws<LayeredFileException>(() => LayerProfiles.Check(folder["a.layerprofile.json"])).Kind);
    }

    [Fact]
    public void Text_in_UTF_16_with_its_mark_is_read()
    {
        File.WriteAllText(folder["a.layerprofile.json"], """{ "name": "左" }""", System.Text.Encoding.Unicode);
        Assert.Equal("左", LayerProfiles.Read(folder["a.layerprofile.json"]).Name);
    }

    [Fact]
    public void Text_that_is_not_UTF_8_is_refused()
    {
        File.WriteAllBytes(folder["a.layerprofile.json"], [.. "{ \"name\": \""u8, 0xE9, .. "\" }"u8]);
        Assert.Contains("not UTF-8", Assert.Single(LayerProfiles.Check(folder["a.layerprofile.json"])).Message, StringComparison.Ordinal);
    }

    private IReadOnlyList<ProfileFinding> Check(string text)
    {
        File.WriteAllText(folder["a.layerprofile.json"], text);
        return LayerProfiles.Check(folder["a.layerprofile.json"]);
    }

    private static void AssertSays(ProfileFinding finding, string jsonPath, int line, int column, string message, string remedy)
    {
        Assert.Equal((jsonPath, line, column), (finding.JsonPath, finding.Line, finding.Column));
        Assert.Contains(message, finding.Message, StringComparison.Ordinal);
        Assert.Contains(remedy, finding.Remedy, StringComparison.Ordinal);
    }
}
