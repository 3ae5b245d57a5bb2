using System.Buffers.Binary;
using System.Text;

namespace LayerTools.Pixels.Colors;

/// <summary>A colour profile as files embed it (ICC.1): a header of 128 bytes, a count, then tags of name, place and length, 4 bytes each. What contradicts its lengths reads as missing.</summary>
internal sealed class ColorProfile(byte[] bytes)
{
    private const int TagsStart = 128;
    private const int TagBytes = 12;
    private const int DeviceOffset = 16;
    private const int MeetingOffset = 20;
    private const int MostTags = 1000;

    /// <summary>Whether device colours are cyan, magenta, yellow and black.</summary>
    public bool IsOfInks => HasCode(DeviceOffset, "CMYK");

    /// <summary>Whether it calls itself a profile of sRGB, in its description of either kind.</summary>
    public bool IsSrgb => FindTag("desc") is var description && (description.IndexOf("sRGB"u8) >= 0 || description.IndexOf("\0s\0R\0G\0B"u8) >= 0);

    /// <summary>What it is called, in the first language it has; null if it does not say. It comes from the file as it is.</summary>
    public string? Description
    {
        get
        {
            // 'desc': type 4, reserved 4, count 4, ASCII; 'mluc': type 4, reserved 4, count 4, record length 4, then language 2, country 2, length 4, place 4, as UTF-16
            const int Head = 12;
            const int LongestDescription = 200;
            var tag = FindTag("desc");
            if (tag.Length < Head) return null;
            var text = IsNamed(tag, "desc") ? ReadText(tag, Head, BinaryPrimitives.ReadUInt32BigEndian(tag.Slice(8)), Encoding.ASCII)
                : IsNamed(tag, "mluc") && tag.Length >= 28 ? ReadText(tag, BinaryPrimitives.ReadUInt32BigEndian(tag.Slice(24)), BinaryPrimitives.ReadUInt32BigEndian(tag.Slice(20)), Encoding.BigEndianUnicode)
                : string.Empty;
            text = text.Trim('\0', ' ');
            return text.Length == 0 ? null : text.Substring(0, Math.Min(text.Length, LongestDescription));
        }
    }

    /// <summary>Whether tables lead to L*a*b*.</summary>
    public bool MeetsInLab => HasCode(MeetingOffset, "Lab ");

    /// <summary>The tone curve of grey, or of red, which the three colours of common profiles share; null if there is none that can be read.</summary>
    public LightCurve? FindLightCurve() => ReadCurve(FindTag("kTRC")) ?? ReadCurve(FindTag("rTRC"));

    /// <summary>A tag's bytes; empty if there is none.</summary>
    public ReadOnlySpan<byte> FindTag(string name)
    {
        if (bytes.Length < TagsStart + 4) return default;
        var count = Math.Min(BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(TagsStart)), MostTags);
        for (var i = 0; i < count; i++)
        {
            var entry = TagsStart + 4 + (i * TagBytes);
            if (entry + TagBytes > bytes.Length) return default;
            if (!IsNamed(bytes.AsSpan(entry, 4), name)) continue;
            var place = BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(entry + 4));
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(entry + 8));
            return (long)place + length <= bytes.Length ? bytes.AsSpan((int)place, (int)length) : default;
        }

        return default;
    }

    private bool HasCode(int offset, string code) => bytes.Length >= TagsStart && IsNamed(bytes.AsSpan(offset, 4), code);

    private static bool IsNamed(ReadOnlySpan<byte> bytes, string name) => bytes[0] == name[0] && bytes[1] == name[1] && bytes[2] == name[2] && bytes[3] == name[3];

    private static string ReadText(ReadOnlySpan<byte> tag, uint place, uint length, Encoding encoding) =>
        (long)place + length <= tag.Length ? encoding.GetString(tag.Slice((int)place, (int)length).ToArray()) : string.Empty;

    private static LightCurve? ReadCurve(ReadOnlySpan<byte> tag)
    {
        // type 4, reserved 4, then what the type says
        const int Head = 8;
        if (tag.Length < Head + 4) return null;
        var content = tag.Slice(Head);
        return IsNamed(tag, "curv") ? ReadTable(content) : IsNamed(tag, "para") ? ReadParameters(content) : null;
    }

    private static LightCurve? ReadTable(ReadOnlySpan<byte> content)
    {
        // count 4; none: values are light; one: a power as 8.8 fixed; more: values of 2
        var count = BinaryPrimitives.ReadUInt32BigEndian(content);
        if (count == 0) return new PowerLightCurve(1, 1, 0, 0, 0, 0, 0);
        if (count > (content.Length - 4) / 2) return null;
        if (count == 1)
        {
            var power = BinaryPrimitives.ReadUInt16BigEndian(content.Slice(4)) / 256.0;
            return power > 0 ? new PowerLightCurve(power, 1, 0, 0, 0, 0, 0) : null;
        }

        var values = new double[count];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = BinaryPrimitives.ReadUInt16BigEndian(content.Slice(4 + (2 * i))) / (double)ushort.MaxValue;
            if (i > 0 && values[i] < values[i - 1]) return null;
        }

        return new TableLightCurve(values);
    }

    private static PowerLightCurve? ReadParameters(ReadOnlySpan<byte> content)
    {
        // form 2, reserved 2, then numbers as 15.16 fixed: g; g a b; g a b c; g a b c d; g a b c d e f
        int[] counts = [1, 3, 4, 5, 7];
        var form = BinaryPrimitives.ReadUInt16BigEndian(content);
        if (form >= counts.Length || content.Length < 4 + (4 * counts[form])) return null;
        var numbers = new double[7];
        for (var i = 0; i < counts[form]; i++) numbers[i] = BinaryPrimitives.ReadInt32BigEndian(content.Slice(4 + (4 * i))) / 65536.0;
        var (g, a, b, c) = (numbers[0], numbers[1], numbers[2], numbers[3]);
        if (g <= 0 || (form > 0 && a <= 0)) return null;
        return form switch
        {
            0 => new PowerLightCurve(g, 1, 0, 0, 0, 0, 0),
            1 => new PowerLightCurve(g, a, b, 0, -b / a, 0, 0),
            2 => new PowerLightCurve(g, a, b, 0, -b / a, c, c),
            _ => new PowerLightCurve(g, a, b, c, numbers[4], numbers[5], numbers[6]),
        };
    }
}
