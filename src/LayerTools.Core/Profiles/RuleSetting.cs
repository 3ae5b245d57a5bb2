using LayerTools.Checks;

namespace LayerTools.Profiles;

/// <summary>How a profile wants a rule.</summary>
/// <param name="Severity">How bad its findings are; null as by default.</param>
/// <param name="Limit">The limit, in the rule's unit; null as by default.</param>
public sealed record RuleSetting(Severity? Severity, double? Limit);
