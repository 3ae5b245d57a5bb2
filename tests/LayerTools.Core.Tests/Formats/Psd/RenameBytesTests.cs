using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>A rename changes the two names and the lengths around them, and nothing else.</summary>
public sealed class RenameBytesTests
{
    [Fact]
    public void Only_the_names_of_the_renamed_layer_change()
    {
        using var folder = new TemporaryFolder();
        foreach (var path in SharedFiles.All)
        {
            if (TryRead(path) is not { LayerCount: > 0 } file) continue;
            var renamed = file.GetLayers().ElementAt(file.LayerCount / 2);
            renamed.Name += " 二";
            file.Record(new Change(renamed.LayerNumber, renamed.Id, renamed.LayerPath, nameof(Layer.Name), null, renamed.Name));
            LayerFiles.Save(file, folder["renamed.psd"], new SaveOptions { Force = true });

            var (before, after) = ((PsdFileDetail)LayerFiles.Read(path).Detail, (PsdFileDetail)LayerFiles.Read(folder["renamed.psd"]).Detail);
            using var opened = new OpenedSources();
            AssertSame(before.ColorData, after.ColorData, opened);
            AssertSame(before.MergedPicture, after.MergedPicture, opened);
            Assert.Equal(before.Resources.Count, after.Resources.Count);
            foreach (var (old, now) in before.Resources.Zip(after.Resources)) AssertSame(old.Data, now.Data, opened);
            Assert.Equal(before.Blocks.Select(block => block.Key), after.Blocks.Select(block => block.Key));
            foreach (var (old, now) in before.Blocks.Zip(after.Blocks)) AssertSame(old.Data, now.Data, opened);
            var changed = before.LayerInfo!.Records.Zip(after.LayerInfo!.Records).Where(pair => !SameButName(pair.First, pair.Second, opened, path)).ToList();
            Assert.True(changed.Count == 0, $"{path}: {changed.Count} records changed beyond their names");
            Assert.Equal(1, before.LayerInfo.Records.Zip(after.LayerInfo.Records).Count(pair => NameOf(pair.First) != NameOf(pair.Second)));
        }
    }

    private static string NameOf(PsdRecord record) => Convert.ToHexString(record.LegacyName) + Convert.ToHexString(record.GetData("luni"));

    private static bool SameButName(PsdRecord old, PsdRecord now, OpenedSources opened, string path)
    {
        var name = PsdKey.Parse("luni");
        var (oldBlocks, newBlocks) = (old.Blocks.Where(block => block.Key != name).ToList(), now.Blocks.Where(block => block.Key != name).ToList());
        Assert.Equal(oldBlocks.Count, newBlocks.Count);
        foreach (var (one, other) in oldBlocks.Zip(newBlocks)) AssertSame(one.Data, other.Data, opened);
        Assert.Equal(old.Planes.Count, now.Planes.Count);
        foreach (var (one, other) in old.Planes.Zip(now.Planes))
        {
            Assert.Equal((one.Role, one.ReadCompressionWord(opened)), (other.Role, other.ReadCompressionWord(opened)));
            AssertSame(one.Data, other.Data, opened);
        }

        return old.Bounds == now.Bounds && old.BlendKey == now.BlendKey && old.Opacity == now.Opacity && old.Clipping == now.Clipping && old.Flags == now.Flags
            && old.MaskData.SequenceEqual(now.MaskData) && old.BlendingRanges.SequenceEqual(now.BlendingRanges);
    }

    private static void AssertSame(ByteSource one, ByteSource other, OpenedSources opened) => Assert.Equal(one.ReadAll(opened), other.ReadAll(opened));

    private static LayerFile? TryRead(string path)
    {
        try
        {
            return LayerFiles.Read(path);
        }
        catch (LayerTools.Errors.LayeredFileException)
        {
            // Refused files are listed, with their reasons, by the round trip tests.
            return null;
        }
    }
}
