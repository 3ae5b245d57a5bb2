using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;

namespace LayerTools.Edits.Rig;

/// <summary>The colours of a layer that stays as it is, as RGB with 8 bits, without its alpha and masks.</summary>
internal sealed class RigColors(Layer layer, PixelReader reader)
{
    /// <summary>Packs one colour, 0 red to 2 blue. All channels are read anew for each, so that one row at a time is in memory.</summary>
    public Plane Pack(int color, FileFormat format, SpoolFile spool)
    {
        var converter = reader.CreateConverter();
        var channels = Enumerable.Range(0, converter.ChannelCount).Select(channel => reader.OpenRows(layer, PlaneRole.Color0 + channel)).ToArray();
        try
        {
            var width = layer.Bounds.Width;
            var values = channels.Select(_ => new float[width]).ToArray();
            return PlanePacker.Pack(PlaneRole.Color0 + color, Compression.PackBits, width, layer.Bounds.Height, 8, format, Read, spool);

            void Read(int y, Span<byte> row)
            {
                for (var channel = 0; channel < channels.Length; channel++)
                {
                    if (channels[channel] is not { } rows) continue;
                    var stored = new byte[rows.RowBytes];
                    rows.ReadRow(stored);
                    Samples.Decode(stored, rows.BitDepth, values[channel]);
                }

                Span<float> pixel = stackalloc float[channels.Length];
                Span<byte> rgb = stackalloc byte[3];
                for (var x = 0; x < row.Length; x++)
                {
                    for (var channel = 0; channel < pixel.Length; channel++) pixel[channel] = values[channel][x];
                    converter.Convert(pixel, rgb);
                    row[x] = rgb[color];
                }
            }
        }
        finally
        {
            foreach (var rows in channels) rows?.Dispose();
        }
    }
}
