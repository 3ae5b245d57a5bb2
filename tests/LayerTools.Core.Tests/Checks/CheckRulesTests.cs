using LayerTools.Checks;
using Xunit;

namespace LayerTools.Tests.Checks;

public class CheckRulesTests
{
    private static readonly IReadOnlyList<Type> TestClasses = [.. typeof(CheckRulesTests).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(RuleTests)) && !type.IsAbstract)];

    public static TheoryData<string> Ids => [.. CheckRules.All.Select(rule => rule.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_rule_has_a_good_and_a_bad_figure(string id) => Assert.Single(TestClasses, type => type.Name == id + "Tests");

    [Fact]
    public void Every_rule_there_is_is_in_the_catalogue() =>
        Assert.Equal(
            typeof(CheckRule).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(CheckRule)) && !type.IsAbstract).Select(type => type.Name).Order(StringComparer.Ordinal),
            CheckRules.All.Select(rule => rule.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_rule_says_what_it_is_about(string id)
    {
        var rule = CheckRules.Find(id)!;

        Assert.Equal(rule.GetType().Name, rule.Id);
        Assert.Matches("^[A-Z][A-Za-z]{3,}$", rule.Id);
        Assert.Matches(@"^\P{Ll}.{4,78}[^.]$", rule.Title);
        Assert.Matches(@"^\P{Ll}.{20,}\.$", rule.Reason);
        Assert.Equal(rule.DefaultLimit is null, rule.LimitUnit is null);
        Assert.Same(rule, CheckRules.Find(id.ToUpperInvariant()));
    }

    [Fact]
    public void There_is_no_rule_of_an_unknown_name() => Assert.Null(CheckRules.Find("NoSuchRule"));
}
