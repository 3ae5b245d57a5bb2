namespace LayerTools.Profiles.Learning;

/// <summary>A profile that was learned from files that are as they should be.</summary>
/// <param name="Profile">The profile.</param>
/// <param name="Learned">What the files showed, a sentence each.</param>
/// <param name="NotLearned">What they did not show, or not clearly, and what stands in the profile in its place, a sentence each.</param>
public sealed record LearnedProfile(LayerProfile Profile, IReadOnlyList<string> Learned, IReadOnlyList<string> NotLearned);
