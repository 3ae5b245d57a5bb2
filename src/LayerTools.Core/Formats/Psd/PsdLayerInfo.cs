using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>All layer records of a file in stored order, back to front (PSD File Formats Specification, 'Layer info').</summary>
/// <param name="Records">The records, dividers of groups included.</param>
/// <param name="FirstAlphaIsTransparency">The stored count was negative: the merged picture's first extra channel is its transparency.</param>
/// <param name="Tail">What follows the channels, usually filling.</param>
/// <param name="StoredLength">Bytes from the count to the end of the filling.</param>
/// <param name="ChannelsStart">Where the channels begin, bytes from the start of the file.</param>
/// <param name="ChannelsEnd">Where the channels end.</param>
internal sealed record PsdLayerInfo(IReadOnlyList<PsdRecord> Records, bool FirstAlphaIsTransparency, ByteSource Tail, long StoredLength, long ChannelsStart, long ChannelsEnd);
