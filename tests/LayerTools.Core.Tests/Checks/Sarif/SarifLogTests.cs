using System.Globalization;
using System.Text.Json;
using LayerTools.Checks;
using LayerTools.Checks.Sarif;
using LayerTools.Errors;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using NJsonSchema;
using Xunit;

namespace LayerTools.Tests.Checks.Sarif;

public class SarifLogTests
{
    private static readonly LayerProfile Profile = new() { Name = "test", Rules = new Dictionary<string, RuleSetting> { ["NoColorProfile"] = new(Severity.None, null), ["GuideOffAxis"] = new(null, 2.5) } };

    private static readonly string Folder = Path.Combine(Path.GetTempPath(), "production");

    [Fact]
    public async Task Logs_follow_the_published_schema()
    {
        var schema = await JsonSchema.FromFileAsync(SharedFiles.FindSchema("sarif-2.1.0-rtm.5.json"), TestContext.Current.CancellationToken);

        Assert.Empty(schema.Validate(Text(CreateLog())));
        Assert.Empty(schema.Validate(Text(new SarifLog([], Profile, "0.1.0", Folder))));
        // The schema is one that objects at all.
        Assert.NotEmpty(schema.Validate(Text(CreateLog()).Replace("\"level\": \"error\"", "\"level\": \"severe\"")));
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ja-JP")]
    public void No_culture_counts(string culture)
    {
        var expected = Text(CreateLog());
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.Equal(expected, Text(CreateLog()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_result_says_rule_level_file_layer_and_remedy()
    {
        var result = Results(CreateLog())[1];

        Assert.Equal("GuideOffAxis", result.GetProperty("ruleId").GetString());
        Assert.Equal("error", result.GetProperty("level").GetString());
        Assert.Equal(CheckRules.All.ToList().FindIndex(rule => rule.Id == "GuideOffAxis"), result.GetProperty("ruleIndex").GetInt32());
        Assert.Equal("Bad.", result.GetProperty("message").GetProperty("text").GetString());
        var location = Assert.Single(result.GetProperty("locations").EnumerateArray());
        Assert.Equal("Head/Eye L", location.GetProperty("logicalLocations")[0].GetProperty("fullyQualifiedName").GetString());
        var artifact = location.GetProperty("physicalLocation").GetProperty("artifactLocation");
        Assert.Equal(("a%20b/h%23ro%20%E8%85%95.psd", "FOLDER", 0), (artifact.GetProperty("uri").GetString(), artifact.GetProperty("uriBaseId").GetString(), artifact.GetProperty("index").GetInt32()));
        Assert.Equal("do", result.GetProperty("properties").GetProperty("remedy").GetString());
    }

    [Fact]
    public void A_rule_says_how_it_is_asked()
    {
        var rules = Run(CreateLog()).GetProperty("tool").GetProperty("driver").GetProperty("rules").EnumerateArray().ToDictionary(rule => rule.GetProperty("id").GetString()!);

        Assert.Equal(CheckRules.All.Select(rule => rule.Id), rules.Keys);
        Assert.False(rules["NoColorProfile"].GetProperty("defaultConfiguration").GetProperty("enabled").GetBoolean());
        Assert.Equal(2.5, rules["GuideOffAxis"].GetProperty("properties").GetProperty("limit").GetDouble());
    }

    [Fact]
    public void Marks_stay_the_same_when_folder_and_measure_change_and_differ_for_each_finding()
    {
        var marks = Results(CreateLog()).Select(Mark).ToList();
        var moved = new SarifLog(CheckRules.All, Profile, "0.2.0", Path.GetTempPath());
        var path = Path.Combine(Path.GetTempPath(), "h#ro 腕.psd");
        moved.Add(path, [.. CreateFindings(path).Select(finding => finding with { Measured = "else", Message = "Else." })]);

        Assert.Equal(marks.Count, marks.Distinct().Count());
        Assert.Equal(marks[..3], Results(moved).Select(Mark));
    }

    [Fact]
    public void A_file_that_could_not_be_checked_is_told_and_the_run_was_no_success()
    {
        var invocation = Run(CreateLog()).GetProperty("invocations")[0];

        Assert.False(invocation.GetProperty("executionSuccessful").GetBoolean());
        Assert.Equal("It is {{damaged}}.", invocation.GetProperty("toolExecutionNotifications")[0].GetProperty("message").GetProperty("text").GetString());
    }

    [Fact]
    public void A_log_is_never_written_over_a_file_unasked()
    {
        using var folder = new TemporaryFolder();
        CreateLog().Write(folder["log.sarif"], overwrite: false);

        Assert.Equal(LayeredFileErrorKind.Unavailable, Assert.Throws<LayeredFileException>(() => CreateLog().Write(folder["log.sarif"], overwrite: false)).Kind);
        CreateLog().Write(folder["log.sarif"], overwrite: true);
        Assert.Equal(CreateLog().ToJson(), File.ReadAllBytes(folder["log.sarif"]));
        Assert.Single(Directory.GetFiles(folder.Root));
    }

    private static SarifLog CreateLog()
    {
        var log = new SarifLog(CheckRules.All, Profile, "0.1.0", Folder);
        var path = Path.Combine(Folder, "a b", "h#ro 腕.psd");
        log.Add(path, CreateFindings(path));
        log.Add(Path.Combine(Path.GetTempPath(), "other", "good.psd"), []);
        log.Add(Path.Combine(Path.GetTempPath(), "other", "hero.psd"), [CreateFindings(Path.Combine(Path.GetTempPath(), "other", "hero.psd"))[0]]);
        log.AddFailure(Path.Combine(Folder, "broken.psd"), "It is {damaged}.");
        log.AddFailure(null, "It is lost.");
        return log;
    }

    private static Finding[] CreateFindings(string path) =>
    [
        new() { Severity = Severity.Warning, Rule = "OddCanvasWidth", Message = "Odd [x](1) {0} \u202E" + '\uD83C', Measured = "101 px", Limit = "even", Remedy = "do", FilePath = path },
        new() { Severity = Severity.Error, Rule = "GuideOffAxis", Message = "Bad.", LayerPath = "Head/Eye L", LayerNumber = 2, Remedy = "do", FilePath = path },
        new() { Severity = Severity.Note, Rule = "GuideOffAxis", Message = "Bad.", LayerPath = "Head/Eye L", LayerNumber = 3, Remedy = "do", FilePath = path },
    ];

    private static string Text(SarifLog log) => System.Text.Encoding.UTF8.GetString(log.ToJson());

    private static JsonElement Run(SarifLog log) => JsonDocument.Parse(log.ToJson()).RootElement.GetProperty("runs")[0];

    private static List<JsonElement> Results(SarifLog log) => [.. Run(log).GetProperty("results").EnumerateArray()];

    private static string? Mark(JsonElement result) => result.GetProperty("partialFingerprints").GetProperty("ruleAndLayer/v1").GetString();
}
