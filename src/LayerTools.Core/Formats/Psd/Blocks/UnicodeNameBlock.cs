using System.Buffers.Binary;
using System.Text;
using LayerTools.Model;

namespace LayerTools.Formats.Psd.Blocks;

/// <summary>The name in UTF-16BE after a count of its units; some writers count a NUL at the end, some fill up to a multiple of 4.</summary>
internal sealed class UnicodeNameBlock() : LayerBlock("luni")
{
    private const int CountLength = 4;

    public static bool TryRead(ReadOnlySpan<byte> data, out string name, out bool endsWithNul)
    {
        (name, endsWithNul) = (string.Empty, false);
        if (data.Length < CountLength) return false;
        var count = BinaryPrimitives.ReadUInt32BigEndian(data);
        if (count > (data.Length - CountLength) / 2) return false;
        var units = data.Slice(CountLength, 2 * (int)count);
        endsWithNul = units.Length >= 2 && units[units.Length - 1] == 0 && units[units.Length - 2] == 0;
        if (endsWithNul) units = units.Slice(0, units.Length - 2);
        name = Decode(units);
        return true;
    }

    /// <summary>What the data says about the filling that the writer uses: a multiple of 2 or 4, or null where it could be either.</summary>
    public static int? TellFilling(ReadOnlySpan<byte> data)
    {
        if (!TryRead(data, out var name, out var endsWithNul)) return null;
        var natural = MeasureNatural(name, endsWithNul);
        return (natural & 3) == 0 ? null : data.Length == natural ? 2 : data.Length == natural + 2 ? 4 : null;
    }

    public override void Load(ReadOnlySpan<byte> data, Layer layer)
    {
        if (TryRead(data, out var name, out _)) layer.Name = name;
    }

    public override bool Says(ReadOnlySpan<byte> data, Layer layer) => TryRead(data, out var name, out _) && name == layer.Name;

    public override bool IsMissed(Layer layer, PsdHabits habits) => !habits.Names.CanSay(layer.Name);

    public override byte[] Store(ReadOnlySpan<byte> stored, Layer layer, PsdHabits habits)
    {
        var wasRead = TryRead(stored, out var oldName, out var endsWithNul);
        var filling = (wasRead ? TellFilling(stored) : null) ?? habits.NameFilling;
        var natural = MeasureNatural(layer.Name, endsWithNul);
        var length = filling == 4 ? (natural + 3) & ~3 : natural;
        // Filling of another length is no known habit; the same number of bytes follows again.
        if (wasRead && stored.Length - MeasureNatural(oldName, endsWithNul) is var extra and not (0 or 2)) length = natural + extra;
        var data = new byte[length];
        BinaryPrimitives.WriteUInt32BigEndian(data, (uint)(layer.Name.Length + (endsWithNul ? 1 : 0)));
        for (var i = 0; i < layer.Name.Length; i++) BinaryPrimitives.WriteUInt16BigEndian(data.AsSpan(CountLength + 2 * i), layer.Name[i]);
        return data;
    }

    private static int MeasureNatural(string name, bool endsWithNul) => CountLength + 2 * (name.Length + (endsWithNul ? 1 : 0));

    /// <summary>Unit by unit, so that a lone surrogate survives.</summary>
    private static string Decode(ReadOnlySpan<byte> units)
    {
        var builder = new StringBuilder(units.Length / 2);
        for (var i = 0; i < units.Length; i += 2) builder.Append((char)BinaryPrimitives.ReadUInt16BigEndian(units.Slice(i)));
        return builder.ToString();
    }
}
