using LayerTools.Errors;
using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>The first 26 bytes (PSD File Formats Specification, 'File Header Section').</summary>
internal sealed record PsdHeader(FileFormat Format, byte[] Reserved, int Channels, int Height, int Width, int Depth, int Mode)
{
    public const int Length = 26;
    private const int MostChannels = 56;

    public bool IsPsb => Format == FileFormat.Psb;

    public static PsdHeader Read(PsdInput input)
    {
        // signature 4, version 2, reserved 6, channels 2, height 4, width 4, depth 2, mode 2
        Span<byte> start = stackalloc byte[4];
        if (!input.TryPeek(0, start) || start[0] != '8' || start[1] != 'B' || start[2] != 'P' || start[3] != 'S')
        {
            throw NotLayered(input, "The file does not begin as a PSD or PSB file does.");
        }

        input.Skip(4);
        var version = input.ReadUInt16();
        if (version is not (1 or 2)) throw NotLayered(input, $"Version {version} is unknown; PSD files have 1 and PSB files 2.");
        var format = (FileFormat)version;
        var reserved = input.ReadBytes(6);
        var channels = input.ReadUInt16();
        if (channels is 0 or > MostChannels) throw input.Damaged($"{channels} channels are outside the format's 1 to {MostChannels}.");
        var height = ReadSide(input, "height", CanvasLimits.LongestSide(format));
        var width = ReadSide(input, "width", CanvasLimits.LongestSide(format));
        var depth = input.ReadUInt16();
        if (depth is not (1 or 8 or 16 or 32)) throw input.Damaged($"A depth of {depth} bits is none of the format's 1, 8, 16 and 32.");
        var mode = input.ReadUInt16();
        if (!Enum.IsDefined(typeof(ColorMode), (int)mode)) throw input.Damaged($"Colour mode {mode} is none of the format's.");
        return new PsdHeader(format, reserved, channels, height, width, depth, mode);
    }

    public void Write(PsdOutput output)
    {
        output.Write("8BPS"u8);
        output.WriteUInt16((ushort)Format);
        output.Write(Reserved);
        output.WriteUInt16((ushort)Channels);
        output.WriteInt32(Height);
        output.WriteInt32(Width);
        output.WriteUInt16((ushort)Depth);
        output.WriteUInt16((ushort)Mode);
    }

    private static int ReadSide(PsdInput input, string side, int largest)
    {
        var length = input.ReadUInt32();
        return length >= 1 && length <= largest ? (int)length : throw input.Damaged($"A canvas {side} of {length} px is outside the format's 1 to {largest} px.");
    }

    private static LayeredFileException NotLayered(PsdInput input, string problem) =>
        new(LayeredFileErrorKind.NotALayeredFile, input.Source.Path, "header", 0, problem, "Name PSD or PSB files only.");
}
