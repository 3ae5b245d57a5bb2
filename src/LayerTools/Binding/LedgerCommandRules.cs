using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>Makes the rules for states from what a user gave.</summary>
internal static class LedgerCommandRules
{
    /// <summary>What marks mean by a profile.</summary>
    /// <param name="profile">The profile; null for the default one.</param>
    /// <param name="doneMarks">The marks that mean finished whatever the profile says; null to leave that to it.</param>
    /// <param name="options">Which layers are no parts; null for common practice.</param>
    public static LedgerRules Create(LayerProfile? profile, IReadOnlyCollection<Mark>? doneMarks = null, StatusOptions? options = null)
    {
        var meanings = (profile ?? LayerProfiles.Default).Marks.ToDictionary(mark => mark.Key, mark => mark.Value);
        if (doneMarks is not null)
        {
            foreach (var mark in meanings.Where(item => item.Value == MarkMeaning.Done).Select(item => item.Key).ToList()) meanings[mark] = MarkMeaning.Open;
            foreach (var mark in doneMarks) meanings[mark] = MarkMeaning.Done;
        }

        return new LedgerRules(meanings, options ?? new StatusOptions());
    }
}
