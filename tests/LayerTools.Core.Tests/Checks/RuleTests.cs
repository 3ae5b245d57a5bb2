using LayerTools.Checks;
using LayerTools.Model;
using LayerTools.Profiles;
using Xunit;

namespace LayerTools.Tests.Checks;

/// <summary>
/// What the tests of every rule share. The test class of the rule <c>OddCanvasWidth</c> is <c>OddCanvasWidthTests</c>; it has a figure that the rule has nothing
/// against and one that it objects to, and inherits tests of both.
/// </summary>
public abstract class RuleTests
{
    /// <summary>The rule, by the name of the test class.</summary>
    internal CheckRule Rule => CheckRules.Find(GetType().Name[..^"Tests".Length]) ?? throw new InvalidOperationException($"No rule in the catalogue belongs to {GetType().Name}.");

    /// <summary>The profile that both figures are held against.</summary>
    private protected virtual LayerProfile Profile => new() { Name = "test" };

    /// <summary>A figure without findings; better one that is nearly bad than an empty one.</summary>
    private protected abstract LayerFile CreateGood();

    /// <summary>A figure with findings.</summary>
    private protected abstract LayerFile CreateBad();

    /// <summary>Where the findings in the bad figure are, front to back; null for the whole file.</summary>
    private protected abstract IReadOnlyList<string?> BadPaths { get; }

    [Fact]
    public void Nothing_is_found_in_the_good_figure() => Assert.Empty(Check(CreateGood()).Select(finding => finding.Message));

    [Fact]
    public void The_bad_figure_is_found_where_it_is_bad()
    {
        var file = CreateBad();
        var findings = Check(file);

        Assert.NotEmpty(findings);
        Assert.Equal(BadPaths, findings.Select(finding => finding.LayerPath));
        Assert.All(findings, finding =>
        {
            Assert.Equal(Rule.Id, finding.Rule);
            Assert.Equal(file.Path, finding.FilePath);
            Assert.Equal(finding.LayerPath, file.GetLayers().FirstOrDefault(layer => layer.LayerNumber == finding.LayerNumber)?.LayerPath);
            Assert.Matches(@"^\P{Ll}.*\.$", finding.Message);
            Assert.Matches(@"^\P{Ll}.*[^ ]$", finding.Remedy);
        });
    }

    [Fact]
    public void The_profile_says_how_bad_it_is()
    {
        var rules = Profile.Rules.ToDictionary(rule => rule.Key, rule => rule.Value);
        var limit = rules.TryGetValue(Rule.Id, out var setting) ? setting.Limit : null;
        foreach (var severity in new[] { Severity.Note, Severity.Warning, Severity.Error })
        {
            rules[Rule.Id] = new RuleSetting(severity, limit);
            Assert.All(Check(CreateBad(), Profile with { Rules = rules }), finding => Assert.Equal(severity, finding.Severity));
        }

        rules[Rule.Id] = new RuleSetting(Severity.None, limit);
        Assert.Empty(Check(CreateBad(), Profile with { Rules = rules }));
    }

    /// <summary>What this rule alone finds.</summary>
    private protected IReadOnlyList<Finding> Check(LayerFile file, LayerProfile? profile = null) =>
        LayerFileChecker.Check(file, profile ?? Profile, [Rule], TestContext.Current.CancellationToken);

    /// <summary>What this rule alone finds with another limit.</summary>
    private protected IReadOnlyList<Finding> Check(LayerFile file, double limit) =>
        Check(file, Profile with { Rules = new Dictionary<string, RuleSetting> { [Rule.Id] = new(null, limit) } });
}
