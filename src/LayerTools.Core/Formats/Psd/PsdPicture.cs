using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>What a file shows to those who do not read its layers.</summary>
/// <param name="Merged">The merged picture with its compression word, in parts.</param>
/// <param name="Resources">Resources that go with it: thumbnail, and whether the picture is real.</param>
internal sealed record PsdPicture(IReadOnlyList<ByteSource> Merged, IReadOnlyList<(ushort Id, byte[] Data)> Resources)
{
    /// <summary>The picture that the file already has.</summary>
    public static PsdPicture Keep(PsdFileDetail detail) => new([detail.MergedPicture], []);
}
