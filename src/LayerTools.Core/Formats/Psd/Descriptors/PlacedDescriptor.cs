namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>A descriptor and where its values stand.</summary>
/// <param name="Descriptor">The descriptor.</param>
/// <param name="Ends">For each of its items, the place right behind its value.</param>
internal sealed record PlacedDescriptor(Descriptor Descriptor, IReadOnlyList<int> Ends);
