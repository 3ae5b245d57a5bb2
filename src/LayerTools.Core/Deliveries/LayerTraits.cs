using LayerTools.Model;

namespace LayerTools.Deliveries;

/// <summary>What a layer is known by.</summary>
/// <param name="Layer">The layer or group.</param>
/// <param name="Id">Its id; null where ids mean nothing.</param>
/// <param name="Path">Its path.</param>
/// <param name="Content">What it holds; null for a group.</param>
internal sealed record LayerTraits(Layer Layer, int? Id, string Path, PartContent? Content);
