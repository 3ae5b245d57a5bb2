namespace LayerTools.Model;

/// <summary>A guide line.</summary>
/// <param name="Position">Distance from the left or top edge of the canvas, px, in steps of 1/32.</param>
/// <param name="IsVertical">True for a vertical line, whose position is an x.</param>
public readonly record struct Guide(double Position, bool IsVertical)
{
    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{(IsVertical ? 'x' : 'y')} = {Position}");
}
