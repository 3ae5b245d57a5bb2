using CsCheck;

namespace LayerTools.Tests.Pixels;

/// <summary>Rows as drawings have them: flat stretches, noise and both in turn.</summary>
internal static class Rows
{
    private static readonly Gen<byte[]> Flat = Gen.Select(Gen.Byte, Gen.Int[1, 300]).Select((value, count) => Enumerable.Repeat(value, count).ToArray());

    private static readonly Gen<byte[]> Noise = Gen.Byte.Array[0, 300];

    private static readonly Gen<byte[]> FewValues = Gen.Byte[0, 1].Array[0, 300];

    public static Gen<byte[]> Any { get; } = Gen.OneOf(Flat, Noise, FewValues).Array[0, 8].Select(parts => parts.SelectMany(part => part).ToArray());
}
