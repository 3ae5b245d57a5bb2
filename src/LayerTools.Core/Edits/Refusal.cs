using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Gathers every reason against an edit, so that the user hears all of them at once.</summary>
/// <param name="file">The file the edit is for.</param>
/// <param name="edit">What is refused, as the beginning of a sentence, for example "Renaming".</param>
internal sealed class Refusal(LayerFile file, string edit)
{
    private readonly List<string> reasons = [];
    private readonly List<string> remedies = [];

    /// <summary>Whether there is any reason.</summary>
    public bool HasReasons => reasons.Count > 0;

    /// <summary>Adds a reason.</summary>
    /// <param name="reason">What is in the way, naming the layers' paths; without a full stop.</param>
    /// <param name="remedy">What to do about it, as a sentence; said once however often it is given.</param>
    public void Add(string reason, string remedy)
    {
        reasons.Add(reason);
        if (!remedies.Contains(remedy)) remedies.Add(remedy);
    }

    /// <exception cref="LayeredFileException">There is a reason.</exception>
    public void ThrowIfAny()
    {
        if (HasReasons) throw Create();
    }

    /// <summary>An error for an edit with one reason against it.</summary>
    public static LayeredFileException Create(LayerFile file, string edit, string reason, string remedy)
    {
        var refusal = new Refusal(file, edit);
        refusal.Add(reason, remedy);
        return refusal.Create();
    }

    private LayeredFileException Create() => new(
        LayeredFileErrorKind.EditRefused, file.Path, "layers", -1,
        $"{edit} is refused and nothing has changed: {string.Join("; ", reasons)}.", string.Join(" ", remedies));
}
