using System.Buffers.Binary;
using LayerTools.Model;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Changes the numbers in a descriptor that are told in canvas pixels; all other bytes stay.</summary>
internal sealed class DescriptorScaler(CanvasScale scale)
{
    private const int NumberBytes = 8;
    private const int TypedNumberBytes = 4 + NumberBytes;

    /// <summary>
    /// Scales sizes in effects, fills and strokes: measures in pixels and points (of strokes, whose resolution stands beside them), where patterns begin, and how large they are.
    /// </summary>
    /// <param name="data">The block's bytes, which are changed.</param>
    /// <param name="start">Where the descriptor's version stands.</param>
    /// <param name="section">What it is, for errors.</param>
    /// <exception cref="Errors.LayeredFileException">The descriptor is damaged.</exception>
    /// <returns>Whether all of it was understood.</returns>
    public bool ScaleSizes(byte[] data, int start, string section) => DescriptorReader.Visit(Copy(data), start, section, placed =>
    {
        var hasPattern = placed.Descriptor.Has("Ptrn");
        for (var i = 0; i < placed.Ends.Count; i++)
        {
            var (key, value) = (placed.Descriptor.Items[i].Key, placed.Descriptor.Items[i].Value);
            var factor = key switch { "Hrzn" => scale.Across, "Vrtc" => scale.Down, _ => scale.Mean };
            var isMeasured = value is DescriptorMeasure { Unit: "#Pxl" or "#Pnt" } || (value is DescriptorMeasure && hasPattern && key == "Scl ");
            // Points of curves have the same keys and another class.
            var isPlace = value is double && placed.Descriptor.ClassId == "Pnt " && key is ("Hrzn" or "Vrtc");
            if (isMeasured || isPlace) Multiply(data, placed.Ends[i] - NumberBytes, factor);
        }
    });

    /// <summary>Scales the corners between which placed content lies: lists of x and y by turns.</summary>
    /// <param name="data">The block's bytes, which are changed.</param>
    /// <param name="start">Where the descriptor's version stands.</param>
    /// <param name="section">What it is, for errors.</param>
    /// <exception cref="Errors.LayeredFileException">The descriptor is damaged.</exception>
    /// <returns>Whether there are corners and no filters with pixels of their own.</returns>
    public bool ScaleCorners(byte[] data, int start, string section)
    {
        var (hasCorners, hasFilters) = (false, false);
        DescriptorReader.Visit(Copy(data), start, section, placed =>
        {
            hasFilters |= placed.Descriptor.Has("filterFX");
            for (var i = 0; i < placed.Ends.Count; i++)
            {
                var (key, value) = (placed.Descriptor.Items[i].Key, placed.Descriptor.Items[i].Value);
                if (key is not ("Trnf" or "nonAffineTransform") || value is not IReadOnlyList<object> corners || corners.Any(corner => corner is not double)) continue;
                hasCorners = true;
                for (var k = 0; k < corners.Count; k++) Multiply(data, placed.Ends[i] - (TypedNumberBytes * (corners.Count - 1 - k)) - NumberBytes, k % 2 == 0 ? scale.Across : scale.Down);
            }
        });
        return hasCorners && !hasFilters;
    }

    /// <summary>Multiplies a number of 8 bytes.</summary>
    public static void Multiply(byte[] data, int place, double factor)
    {
        var number = data.AsSpan(place, NumberBytes);
        BinaryPrimitives.WriteInt64BigEndian(number, BitConverter.DoubleToInt64Bits(BitConverter.Int64BitsToDouble(BinaryPrimitives.ReadInt64BigEndian(number)) * factor));
    }

    /// <summary>What is read must not change while it is read.</summary>
    private static byte[] Copy(byte[] data) => (byte[])data.Clone();
}
