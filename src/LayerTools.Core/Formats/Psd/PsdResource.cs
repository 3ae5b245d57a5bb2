using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>One image resource, kept as it is (PSD File Formats Specification, 'Image Resources Section').</summary>
/// <param name="Signature">Usually 8BIM.</param>
/// <param name="Id">What the resource is.</param>
/// <param name="Name">The Pascal string, padded to even, as stored.</param>
/// <param name="Data">The content.</param>
/// <param name="Padding">What follows to make the length even.</param>
internal sealed record PsdResource(uint Signature, ushort Id, byte[] Name, ByteSource Data, byte[] Padding)
{
    public const ushort Resolution = 1005;
    public const ushort Guides = 1032;
    public const ushort Thumbnail = 1036;
    public const ushort LightAngle = 1037;
    public const ushort ColorProfile = 1039;
    public const ushort TransparentIndex = 1047;
    public const ushort Slices = 1050;
    public const ushort Version = 1057;
    private const ushort WorkPath = 1025;
    private const ushort FirstSavedPath = 2000;
    private const ushort LastSavedPath = 2997;

    public PsdResource(ushort id, byte[] data)
        : this(PsdKey.Signature, id, new byte[2], new MemoryBytes(data), new byte[data.Length & 1])
    {
    }

    /// <summary>Whether a resource holds path records.</summary>
    public static bool IsPath(ushort id) => id is WorkPath or (>= FirstSavedPath and <= LastSavedPath);

    public long Length => 4 + 2 + Name.Length + 4 + Data.Length + Padding.Length;

    public PsdResource With(byte[] data) => this with { Data = new MemoryBytes(data), Padding = new byte[data.Length & 1] };

    public static PsdResource Read(PsdInput input)
    {
        var signature = input.ReadUInt32();
        var id = input.ReadUInt16();
        Span<byte> nameLength = stackalloc byte[1];
        if (!input.TryPeek(0, nameLength)) input.Require(1);
        var name = input.ReadBytes((nameLength[0] + 2) & ~1);
        var length = input.ReadUInt32();
        var data = input.ReadSource(length, IsPath(id));
        var padding = input.ReadBytes(Math.Min(length & 1, input.Remaining));
        return new PsdResource(signature, id, name, data, padding);
    }

    public void Write(PsdOutput output)
    {
        output.WriteUInt32(Signature);
        output.WriteUInt16(Id);
        output.Write(Name);
        output.WriteUInt32(checked((uint)Data.Length));
        output.Write(Data);
        output.Write(Padding);
    }
}
