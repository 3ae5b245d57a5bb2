using LayerTools.Model;

namespace LayerTools.Pixels.Compositing;

/// <summary>Which part of a file is drawn, and how.</summary>
internal sealed record CompositeOptions
{
    /// <summary>Draw this layer or group alone, whether it is switched on or not, with its mask and opacity but in normal mode and not clipped. Null for the whole file.</summary>
    public Layer? Subject { get; init; }

    /// <summary>Draw the subject's pixels as they are, at full opacity, instead of as they are seen.</summary>
    public bool Plain { get; init; }

    /// <summary>Leave painted and vector masks out of the subject. What a path fills stays cut out by it.</summary>
    public bool Unmasked { get; init; }

    /// <summary>Which layers and groups are switched on; null for those that the file shows. A group that is off hides what is in it, a layer what is clipped to it.</summary>
    public Func<Layer, bool>? Shows { get; init; }

    /// <summary>The rectangle to draw, canvas px, which may reach past the canvas. Null for the canvas or, with a subject, the subject's whole rectangle.</summary>
    public Bounds? Area { get; init; }

    /// <summary>Threads at work; null for one per processor. The picture does not depend on it.</summary>
    public int? Threads { get; init; }

    public CancellationToken Cancellation { get; init; }
}
