using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>A layer and its reflection.</summary>
internal sealed record MirrorPair(Layer Source, Layer Copy)
{
    /// <summary>This pair and those of all layers inside, front to back.</summary>
    public IEnumerable<MirrorPair> Flatten() =>
        new[] { this }.Concat(Source.GetChildren().Zip(Copy.GetChildren(), (source, copy) => new MirrorPair(source, copy).Flatten()).SelectMany(pairs => pairs));
}
