namespace LayerTools.Deliveries;

/// <summary>How strongly it speaks for two layers being one that what is known of them agrees. The weights are our own: each kind of evidence outweighs weaker ones alone.</summary>
internal static class MatchScore
{
    /// <summary>Less than this is no match.</summary>
    public const double Least = 2.5;

    /// <summary>Evidence that differs by less than this does not decide between two: it is less than what the same place counts.</summary>
    public const double Undecided = 0.2;

    private const double SameId = 4;
    private const double OtherId = -1.5;
    private const double SamePath = 3;
    private const double SameName = 1.5;
    private const double SameContent = 4;
    private const double SameLook = 3;
    private const double SamePlace = 0.25;
    private const double OtherKind = -1;

    /// <summary>Below this, layers do not look alike at all.</summary>
    private const double LeastLikeness = 0.8;

    /// <summary>Below this, hashes say that nothing is in common, and the coarse pictures are not asked.</summary>
    private const double LeastHashLikeness = 0.4;

    /// <summary>The score of two layers that are no groups.</summary>
    public static double OfLayers(LayerTraits old, LayerTraits @new)
    {
        var score = OfNames(old, @new);
        if (old.Layer.Kind != @new.Layer.Kind) score += OtherKind;
        var (oldContent, newContent) = (old.Content!, @new.Content!);
        if (oldContent.IsEmpty || newContent.IsEmpty) return score;
        if (oldContent.Pixels == newContent.Pixels) score += SameContent;
        else score += SameLook * Likeness(oldContent, newContent);
        return oldContent.Painted == newContent.Painted ? score + SamePlace : score;
    }

    /// <summary>The score of two groups.</summary>
    /// <param name="old">The old one.</param>
    /// <param name="new">The new one.</param>
    /// <param name="shared">How much of what lies in any of both lies in both, 0 to 1.</param>
    public static double OfGroups(LayerTraits old, LayerTraits @new, double shared) => OfNames(old, @new) + (SameContent * shared);

    /// <summary>How alike two layers of different content look, 0 to 1; 0 also where they are not alike enough to count.</summary>
    public static double Likeness(PartContent old, PartContent @new)
    {
        if (old.Look is not { } oldLook || @new.Look is not { } newLook || oldLook.CompareHash(newLook) < LeastHashLikeness) return 0;
        var likeness = oldLook.Compare(newLook);
        return likeness < LeastLikeness ? 0 : likeness;
    }

    private static double OfNames(LayerTraits old, LayerTraits @new)
    {
        var score = old.Id is null || @new.Id is null ? 0 : old.Id == @new.Id ? SameId : OtherId;
        if (old.Path == @new.Path) return score + SamePath;
        return old.Layer.Name == @new.Layer.Name ? score + SameName : score;
    }
}
