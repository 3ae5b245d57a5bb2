using LayerTools.Model;
using LayerTools.Names;

namespace LayerTools.Profiles;

/// <summary>What a studio wants of a layered file: facts and limits, never anything that runs. Read from a <c>*.layerprofile.json</c> file.</summary>
public sealed record LayerProfile
{
    /// <summary>What the profile is called.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public string Description { get; init; } = string.Empty;

    /// <summary>The file it was read from; null for one that ships with the module.</summary>
    public string? Path { get; init; }

    /// <summary>The canvas.</summary>
    public CanvasProfile Canvas { get; init; } = new();

    /// <summary>How names are written and which words there are.</summary>
    public NamingStyle Naming { get; init; } = new();

    /// <summary>The zones of the stack, front to back. Parts of zones that are not listed have no place of their own.</summary>
    public IReadOnlyList<string> Stack { get; init; } = [];

    /// <summary>What marks mean; marks that are not listed mean nothing.</summary>
    public IReadOnlyDictionary<Mark, MarkMeaning> Marks { get; init; } = new Dictionary<Mark, MarkMeaning>();

    /// <summary>The screens that the figure is shown on, the most important first.</summary>
    public IReadOnlyList<ScreenSize> Screens { get; init; } = [ScreenSize.Common];

    /// <summary>How textures are packed.</summary>
    public TextureProfile Textures { get; init; } = new();

    /// <summary>What differs from the rules as they are by default, by the rule's id.</summary>
    public IReadOnlyDictionary<string, RuleSetting> Rules { get; init; } = new Dictionary<string, RuleSetting>();

    /// <inheritdoc/>
    public override string ToString() => Name;
}
