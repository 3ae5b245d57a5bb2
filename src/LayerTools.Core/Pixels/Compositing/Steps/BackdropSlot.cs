namespace LayerTools.Pixels.Compositing.Steps;

/// <summary>A place of each thread where a row is kept as it was at some moment, for layers that cut through to it.</summary>
internal sealed class BackdropSlot;
