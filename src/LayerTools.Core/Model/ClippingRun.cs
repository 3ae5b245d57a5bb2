namespace LayerTools.Model;

/// <summary>A layer and the layers clipped to it: neighbours in one group, the clipped ones in front of their base.</summary>
/// <param name="Base">The layer that shows the others; null if clipped layers lie at the back with nothing behind them.</param>
/// <param name="Clipped">The layers clipped to the base, front to back.</param>
internal sealed record ClippingRun(Layer? Base, IReadOnlyList<Layer> Clipped)
{
    /// <summary>All layers of the run, front to back: the base comes last.</summary>
    public IReadOnlyList<Layer> Layers { get; } = Base is null ? Clipped : [.. Clipped, Base];

    /// <summary>The run that a layer of a file belongs to, as its base or as a clipped layer.</summary>
    public static ClippingRun Of(Layer layer)
    {
        var siblings = layer.Parent!.GetChildren();
        var back = layer.IndexInParent;
        while (back < siblings.Count && siblings[back].Clipped) back++;
        var front = back;
        while (front > 0 && siblings[front - 1].Clipped) front--;
        var clipped = new Layer[back - front];
        for (var i = 0; i < clipped.Length; i++) clipped[i] = siblings[front + i];
        return new ClippingRun(back < siblings.Count ? siblings[back] : null, clipped);
    }

    /// <summary>All runs of one group's layers, back to front; most are a layer alone.</summary>
    /// <param name="layers">The layers, front to back.</param>
    public static IEnumerable<ClippingRun> Split(IReadOnlyList<Layer> layers)
    {
        for (var i = layers.Count - 1; i >= 0;)
        {
            var below = layers[i].Clipped ? null : layers[i--];
            var clipped = new List<Layer>();
            while (i >= 0 && layers[i].Clipped) clipped.Insert(0, layers[i--]);
            yield return new ClippingRun(below, clipped);
        }
    }
}
