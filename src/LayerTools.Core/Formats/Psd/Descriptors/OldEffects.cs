using System.Buffers.Binary;
using LayerTools.Model;
using LayerTools.Model.Effects;
using LayerTools.Model.Fills;

namespace LayerTools.Formats.Psd.Descriptors;

/// <summary>Layer effects as old files store them: a version, a count, then a block for each kind (PSD File Formats Specification, 'Effects Layer').</summary>
internal static class OldEffects
{
    public const string Key = "lrFX";
    private const double Fixed = 65536;

    public static IReadOnlyList<Effect> Read(byte[] data, double lightAngle)
    {
        var input = new DescriptorInput(data, 0, $"block '{Key}'");
        input.ReadInt16();
        var byKey = new Dictionary<string, DescriptorInput>(StringComparer.Ordinal);
        for (var count = input.ReadInt16(); count > 0; count--)
        {
            // signature 4, key 4, length 4
            input.ReadCodeText();
            var key = input.ReadCodeText();
            byKey[key] = new DescriptorInput(input.ReadBytes(), 0, $"block '{Key}', {key}");
        }

        var effects = new List<Effect?>();
        if (byKey.TryGetValue("dsdw", out var shade)) effects.Add(ReadShade(shade, lightAngle, isInward: false));
        if (byKey.TryGetValue("oglw", out var halo)) effects.Add(ReadHalo(halo, isInward: false));
        if (byKey.TryGetValue("sofi", out var fill)) effects.Add(ReadFill(fill));
        if (byKey.TryGetValue("iglw", out var innerHalo)) effects.Add(ReadHalo(innerHalo, isInward: true));
        if (byKey.TryGetValue("isdw", out var innerShade)) effects.Add(ReadShade(innerShade, lightAngle, isInward: true));
        if (byKey.TryGetValue("bevl", out var relief)) effects.Add(ReadRelief(relief));
        return [.. effects.OfType<Effect>()];
    }

    /// <summary>Changes sizes and distances; the bytes are as <see cref="Read"/> takes them.</summary>
    /// <param name="data">The block's bytes, which are changed.</param>
    /// <param name="factor">How much larger they become.</param>
    /// <exception cref="Errors.LayeredFileException">The block ends too early.</exception>
    /// <returns>Whether each place was there.</returns>
    public static bool Scale(byte[] data, double factor)
    {
        var input = new DescriptorInput(data, 0, $"block '{Key}'");
        input.ReadInt16();
        var isWhole = true;
        for (var count = input.ReadInt16(); count > 0; count--)
        {
            input.ReadCodeText();
            // Places after the version: of shades the size and, behind spread and angle, the distance; of a relief, behind the angle, strength and size.
            int[] places = input.ReadCodeText() switch { "dsdw" or "isdw" => [4, 16], "oglw" or "iglw" => [4], "bevl" => [8, 12], _ => [] };
            var content = input.ReadBytes();
            foreach (var place in places)
            {
                isWhole &= content.Length >= place + 4;
                if (content.Length < place + 4) continue;
                var number = data.AsSpan(input.Position - content.Length + place);
                BinaryPrimitives.WriteInt32BigEndian(number, (int)Math.Max(int.MinValue, Math.Min(int.MaxValue, Math.Round(BinaryPrimitives.ReadInt32BigEndian(number) * factor))));
            }
        }

        return isWhole;
    }

    /// <summary>version 4, blur 4, intensity 4 (per cent), angle 4, distance 4 (all 16.16), colour 10, blend mode 8, enabled 1, file's angle 1, opacity 1.</summary>
    private static Effect? ReadShade(DescriptorInput input, double lightAngle, bool isInward)
    {
        input.ReadInt32();
        var size = input.ReadInt32() / Fixed;
        var spread = input.ReadInt32() / Fixed;
        var angle = input.ReadInt32() / Fixed;
        var distance = input.ReadInt32() / Fixed;
        var color = ReadColor(input);
        var mode = ReadMode(input);
        var isOn = input.ReadByte() != 0;
        if (input.ReadByte() != 0) angle = lightAngle;
        var opacity = input.ReadByte() / (float)byte.MaxValue;
        if (!isOn) return null;
        if (color is null) return new UndrawnEffect("layer effect: shade in a colour that cannot be told");
        return new ShadeEffect(mode, opacity, color.Value)
        {
            IsInward = isInward,
            Right = -distance * Math.Cos(angle * Math.PI / 180),
            Down = distance * Math.Sin(angle * Math.PI / 180),
            Size = Math.Max(0, size),
            Spread = Math.Max(0, Math.Min(1, spread / 100)),
        };
    }

    /// <summary>version 4, blur 4, intensity 4, colour 10, blend mode 8, enabled 1, opacity 1, and inward, from version 2 on: from the centre 1.</summary>
    private static Effect? ReadHalo(DescriptorInput input, bool isInward)
    {
        const double UsualStrength = 2;
        var version = input.ReadInt32();
        var size = input.ReadInt32() / Fixed;
        var spread = input.ReadInt32() / Fixed;
        var color = ReadColor(input);
        var mode = ReadMode(input);
        var isOn = input.ReadByte() != 0;
        var opacity = input.ReadByte() / (float)byte.MaxValue;
        var isFromCentre = isInward && version >= 2 && input.ReadByte() != 0;
        if (!isOn) return null;
        if (color is null) return new UndrawnEffect("layer effect: halo in a colour that cannot be told");
        return new ShadeEffect(mode, opacity, color.Value)
        {
            IsInward = isInward,
            Size = Math.Max(0, size),
            Spread = Math.Max(0, Math.Min(1, spread / 100)),
            IsHalo = true,
            Strength = UsualStrength,
            IsFromCentre = isFromCentre,
        };
    }

    /// <summary>version 4, blend mode 8, colour 10, opacity 1, enabled 1.</summary>
    private static FillEffect? ReadFill(DescriptorInput input)
    {
        input.ReadInt32();
        var mode = ReadMode(input);
        var color = ReadColor(input);
        var opacity = input.ReadByte() / (float)byte.MaxValue;
        if (input.ReadByte() == 0) return null;
        return new FillEffect(mode, opacity, color is { } told ? new ColorFill(told) : new UndrawnFill("colour that cannot be told"));
    }

    /// <summary>version 4, angle 4, strength 4, blur 4, two blend modes 16, two colours 20, style 1, two opacities 2, enabled 1.</summary>
    private static UndrawnEffect? ReadRelief(DescriptorInput input)
    {
        const int BeforeEnabled = 55;
        for (var i = 0; i < BeforeEnabled; i++) input.ReadByte();
        return input.ReadByte() != 0 ? new UndrawnEffect("layer effect: relief") : null;
    }

    private static BlendMode ReadMode(DescriptorInput input)
    {
        input.ReadCodeText();
        return BlendModeKeys.Read(PsdKey.Parse(input.ReadCodeText()));
    }

    /// <summary>Colour space 2 (0 is RGB), then four values of 2.</summary>
    private static FillColor? ReadColor(DescriptorInput input)
    {
        var space = input.ReadInt16();
        var parts = new float[4];
        for (var i = 0; i < parts.Length; i++) parts[i] = (ushort)input.ReadInt16() / (float)ushort.MaxValue;
        if (space != 0) return null;
        return new FillColor(parts[0], parts[1], parts[2]);
    }
}
