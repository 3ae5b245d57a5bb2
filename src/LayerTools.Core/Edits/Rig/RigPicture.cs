using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Pixels.Compositing;
using LayerTools.Pixels.Compositing.Sinks;

namespace LayerTools.Edits.Rig;

/// <summary>One drawn part: RGB and alpha of 8 bits, not premultiplied, kept unpacked in a spool of its own so that no canvas has to fit into memory.</summary>
internal sealed class RigPicture : IDisposable
{
    private readonly SpoolFile spool;
    private readonly ByteSource[] channels;

    private RigPicture(Bounds area, Bounds painted, ByteSource[] channels, SpoolFile spool)
    {
        (Area, Painted) = (area, painted);
        this.channels = channels;
        this.spool = spool;
    }

    /// <summary>What was drawn, canvas px.</summary>
    public Bounds Area { get; }

    /// <summary>The smallest rectangle around all pixels that are not fully transparent.</summary>
    public Bounds Painted { get; }

    /// <summary>Draws a rectangle of a file.</summary>
    /// <param name="compositor">Draws it.</param>
    /// <param name="area">The rectangle that the compositor draws.</param>
    /// <param name="shapes">What it is cut to.</param>
    public static RigPicture Draw(Compositor compositor, Bounds area, IReadOnlyList<RigPicture> shapes)
    {
        var spool = new SpoolFile();
        if (area.IsEmpty) return new RigPicture(Bounds.Empty, Bounds.Empty, [], spool);
        var writers = Enumerable.Range(0, StraightSink.ChannelCount).Select(_ => new SpoolWriter(spool)).ToArray();
        var painted = Bounds.Empty;
        var rows = writers.Select(_ => new byte[area.Width]).ToArray();
        var shape = new byte[area.Width];
        try
        {
            compositor.RenderStraight(Take);
            return new RigPicture(area, painted, [.. writers.Select(writer => writer.Complete())], spool);
        }
        catch
        {
            spool.Dispose();
            throw;
        }
        finally
        {
            foreach (var writer in writers) writer.Dispose();
        }

        void Take(MergedBand band)
        {
            for (var row = 0; row < band.RowCount; row++)
            {
                for (var channel = 0; channel < rows.Length; channel++) band.GetRows(channel).Slice(row * area.Width, area.Width).CopyTo(rows[channel]);
                var y = area.Top + band.Top + row;
                foreach (var cutter in shapes) Cut(cutter, y);
                painted = painted.Union(FindPainted(rows[StraightSink.ChannelCount - 1], area.Left, y));
                for (var channel = 0; channel < rows.Length; channel++) writers[channel].Write(rows[channel], 0, area.Width);
            }
        }

        void Cut(RigPicture cutter, int y)
        {
            cutter.ReadAlpha(y, area.Left, shape);
            var alpha = rows[StraightSink.ChannelCount - 1];
            for (var x = 0; x < alpha.Length; x++)
            {
                if (shape[x] == byte.MaxValue) continue;
                alpha[x] = (byte)(((alpha[x] * shape[x]) + (byte.MaxValue / 2)) / byte.MaxValue);
                if (alpha[x] == 0) rows[0][x] = rows[1][x] = rows[2][x] = 0;
            }
        }
    }

    /// <summary>The opacity of a run of pixels; 0 outside of what was drawn.</summary>
    public void ReadAlpha(int y, int x, Span<byte> alpha) => Read(StraightSink.ChannelCount - 1, y, x, alpha);

    /// <summary>A run of one channel, 0 red to 3 alpha; 0 outside of what was drawn.</summary>
    public void Read(int channel, int y, int x, Span<byte> samples)
    {
        samples.Clear();
        if (y < Area.Top || y >= Area.Bottom) return;
        var from = Math.Max(x, Area.Left);
        var to = Math.Min(x + samples.Length, Area.Right);
        if (from < to) channels[channel].Read(((long)(y - Area.Top) * Area.Width) + from - Area.Left, samples.Slice(from - x, to - from), NoFiles);
    }

    /// <summary>Packs the picture, cut or filled up to a rectangle, as a layer's channels.</summary>
    public List<Plane> Pack(Bounds bounds, FileFormat format, SpoolFile target)
    {
        PlaneRole[] roles = [PlaneRole.Alpha, PlaneRole.Color0, PlaneRole.Color1, PlaneRole.Color2];
        return [.. roles.Select(role => PlanePacker.Pack(role, Compression.PackBits, bounds.Width, bounds.Height, 8, format, Source(role), target))];

        RowSource Source(PlaneRole role) => (y, row) => Read(role == PlaneRole.Alpha ? StraightSink.ChannelCount - 1 : (int)role, bounds.Top + y, bounds.Left, row);
    }

    public void Dispose() => spool.Dispose();

    private static OpenedSources NoFiles { get; } = new();

    private static Bounds FindPainted(byte[] alpha, int left, int y)
    {
        var first = Array.FindIndex(alpha, value => value != 0);
        return first < 0 ? Bounds.Empty : new Bounds(left + first, y, left + Array.FindLastIndex(alpha, value => value != 0) + 1, y + 1);
    }
}
