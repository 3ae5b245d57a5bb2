using LayerTools.Formats;
using LayerTools.Formats.Psd;
using LayerTools.Model;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Formats.Psd;

/// <summary>Every good file comes back byte for byte: unedited, encoded anew from the model, and renamed there and back.</summary>
public sealed class RoundTripTests
{
    /// <summary>Files that are refused on reading, each with the reason; at most three may ever stand here.</summary>
    private static readonly Dictionary<string, string> Refused = new()
    {
        ["group-divider-blend-mode.psd"] = "its merged picture ends after 1,604 of 40,000 bytes, so it counts as truncated",
    };

    /// <summary>A name of odd length leaves no trace of whether the writer fills up to 2 or 4, if all of a file's names had it.</summary>
    private static readonly string[] LosingTheirFillingToOddPrefixes = ["names-luni-unpadded.psd", "group-clipping.psd"];

    [Fact]
    public void Files_come_back_byte_for_byte_when_everything_is_encoded_from_the_model()
    {
        AssertEach((path, _) => Encode(LayerFiles.Read(path), PsdEncoding.EncodeEverything));
    }

    [Fact]
    public void Files_come_back_byte_for_byte_when_saved_without_an_edit()
    {
        AssertEach((path, folder) =>
        {
            LayerFiles.Save(LayerFiles.Read(path), folder["copy.psd"], new SaveOptions { Force = true });
            return File.ReadAllBytes(folder["copy.psd"]);
        });
    }

    [Theory]
    [InlineData("x")]
    [InlineData("Renamed ")]
    [InlineData("名前")]
    public void Renaming_every_layer_and_back_gives_the_original_bytes(string prefix)
    {
        AssertEach((path, folder) =>
        {
            var file = LayerFiles.Read(path);
            var originals = file.GetLayers().Select(layer => layer.Name).ToList();
            Rename(file, name => prefix + name);
            LayerFiles.Save(file, folder["renamed.psd"], new SaveOptions { Force = true });
            var renamed = LayerFiles.Read(folder["renamed.psd"]);
            Assert.Equal(originals.Select(name => prefix + name), renamed.GetLayers().Select(layer => layer.Name));
            Rename(renamed, name => name[prefix.Length..]);
            LayerFiles.Save(renamed, folder["back.psd"], new SaveOptions { Force = true });
            return File.ReadAllBytes(folder["back.psd"]);
        }, path => NamesAgree(path, prefix) && !(prefix.Length % 2 == 1 && LosingTheirFillingToOddPrefixes.Contains(Path.GetFileName(path))));
    }

    [Fact]
    public void At_most_three_files_are_refused() => Assert.InRange(Refused.Count, 0, 3);

    [Fact]
    public void There_are_at_least_forty_fixtures_of_our_own() => Assert.InRange(SharedFiles.Fixtures.Count, 40, 1000);

    private static void AssertEach(Func<string, TemporaryFolder, byte[]> write, Func<string, bool>? applies = null)
    {
        if (SharedFiles.FindLayered("corpus").Count == 0) TestContext.Current.AddWarning("The corpus is not there; only the project's own fixtures are compared.");
        using var folder = new TemporaryFolder();
        var failures = new List<string>();
        var compared = 0;
        foreach (var path in SharedFiles.All.Where(path => !Refused.ContainsKey(Path.GetFileName(path)) && (applies?.Invoke(path) ?? true)))
        {
            compared++;
            try
            {
                if (FindDifference(File.ReadAllBytes(path), write(path, folder)) is { } difference) failures.Add($"{path}: {difference}");
            }
            catch (Exception error) when (error is not Xunit.Sdk.XunitException)
            {
                failures.Add($"{path}: {error}");
            }
        }

        Assert.True(failures.Count == 0, $"{failures.Count} of {compared} files differ:\n{string.Join("\n", failures)}");
        Assert.InRange(compared, 40, int.MaxValue);
    }

    /// <summary>Whether each layer's two names say the same, so that a rename there and back can restore both; a layer without the Unicode one can only take names that the legacy one can say.</summary>
    private static bool NamesAgree(string path, string prefix)
    {
        var file = LayerFiles.Read(path);
        var names = ((PsdFileDetail)file.Detail).Habits.Names;
        return file.GetLayers().All(layer => ((PsdLayerDetail)layer.Detail).Record is var record && names.Explains(record.LegacyName, layer.Name) && (record.Has("luni") || names.CanSay(prefix)));
    }

    private static void Rename(LayerFile file, Func<string, string> rename)
    {
        foreach (var layer in file.GetLayers()) layer.Name = rename(layer.Name);
        file.Record(new Change(0, null, string.Empty, "Name", null, null));
    }

    private static byte[] Encode(LayerFile file, PsdEncoding encoding)
    {
        using var opened = new OpenedSources();
        using var stream = new MemoryStream();
        PsdWriter.Layout(file, PsdPicture.Keep((PsdFileDetail)file.Detail), encoding).CopyTo(stream, opened);
        return stream.ToArray();
    }

    private static string? FindDifference(byte[] expected, byte[] actual)
    {
        var common = expected.AsSpan().CommonPrefixLength(actual);
        return common == expected.Length && common == actual.Length ? null : $"{actual.Length} bytes instead of {expected.Length}; the first difference is at byte {common}";
    }
}
