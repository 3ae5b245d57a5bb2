namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>While a plan is made: one group of layers, and what a layer in it would cut through to.</summary>
/// <param name="parent">The scope around it; null for the whole picture.</param>
/// <param name="isOpen">Whether its layers mix with what lies below the group.</param>
internal sealed class KnockoutScope(KnockoutScope? parent, bool isOpen)
{
    /// <summary>Where what lies below the group is to be kept; null if no layer asked.</summary>
    public BackdropSlot? Slot { get; private set; }

    /// <summary>What lies below the group; null for nothing, as below an isolated group and below the picture.</summary>
    public BackdropSlot? FindBelowGroup() => parent is null ? FindBottom() : isOpen ? Slot ??= new BackdropSlot() : null;

    /// <summary>The backdrop of the whole picture, unless an isolated group lies between.</summary>
    public BackdropSlot? FindBottom() => parent is null ? (isOpen ? Slot ??= new BackdropSlot() : null) : isOpen ? parent.FindBottom() : null;
}
