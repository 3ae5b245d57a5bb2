using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Profiles.Learning;

/// <summary>How sides are written, where, and whose they are.</summary>
internal sealed class SideLesson : Lesson
{
    private readonly Tally<(string Left, string Right)> words = new();
    private readonly Tally<SidePlace> places = new();
    private readonly Tally<SideOwner> owners = new();

    public override void Look(LayerFile file, IReadOnlyList<Layer> parts)
    {
        foreach (var part in parts.Where(part => part.Side != Side.None))
        {
            var token = SideToken.FindAll(part.Name).Last();
            words.Add(token.Side == Side.Left ? (token.Text, token.OppositeText) : (token.OppositeText, token.Text));
            places.Add(part.Name.Take(token.Start).Any(char.IsLetter) ? SidePlace.End : SidePlace.Start);
            // Twice the way from the centre line to the part's middle, in px.
            var offset = (long)part.Bounds.Left + part.Bounds.Right - file.Width;
            if (!part.Bounds.IsEmpty && offset != 0) owners.Add(offset > 0 == (part.Side == Side.Left) ? SideOwner.Character : SideOwner.Viewer);
        }
    }

    public override LayerProfile Teach(LayerProfile profile, LessonNotes notes)
    {
        var style = profile.Naming.Sides;
        if (!words.TryFindMost(out var pair, out var isClear) || !places.TryFindMost(out var place, out _))
        {
            notes.NotLearned.Add($"Sides: no name says one in a way that is known, so that they are as in '{profile.Name}'.");
            return profile;
        }

        style = style with { Left = pair.Left, Right = pair.Right, Place = place };
        notes.Learned.Add($"Sides: '{pair.Left}' and '{pair.Right}', {(place == SidePlace.Start ? "before" : "after")} the part.");
        if (!isClear) notes.NotLearned.Add("Sides: they are written in several ways, of which the most frequent is taken; the others are read all the same.");
        if (!owners.TryFindMost(out var owner, out var isOwnerClear))
        {
            notes.NotLearned.Add($"Sides: no part with a side lies off the centre line, so that whose left is meant is as in '{profile.Name}'.");
        }
        else
        {
            style = style with { Owner = owner };
            notes.Learned.Add(FormattableString.Invariant($"Sides: left is the {(owner == SideOwner.Character ? "figure's own" : "viewer's")}, as {owners.Of(owner)} of {owners.Total} parts lie."));
            if (!isOwnerClear) notes.NotLearned.Add("Sides: whose left is meant is not clear, since many parts lie on the other side.");
        }

        return profile with { Naming = profile.Naming with { Sides = style } };
    }
}
