using System.Text.Json;
using CsCheck;
using LayerTools.Checks;
using LayerTools.Errors;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Profiles;

public sealed class ProfileWriterTests : IDisposable
{
    private static readonly Gen<string> Words = AnyOf("fin", "Gill", "足ひれ", "a \"b\" \\", "🐟 fish", "naïve");

    private static readonly Gen<CanvasProfile> Canvases = Gen.Select(Maybe(Gen.Int[1, 150_000]), Maybe(Gen.Int[1, 300_000]), Maybe(Gen.Double[1, 32_767]), Gen.Bool)
        .Select((width, height, ppi, even) => new CanvasProfile { Width = width * (even ? 2 : 1), Height = height, Ppi = ppi, EvenWidth = even });

    private static readonly Gen<NamingStyle> Styles = Gen.Select(
            Gen.Select(AnyOf(" ", "_", "-", " - "), Gen.Enum<NameCase>(), Gen.Enum<NameLanguage>(), Gen.Int[1, 9], Gen.Int[0, 100], Gen.Int[1, 255]),
            Gen.Select(Gen.Enum<SidePlace>(), Gen.Enum<SideOwner>(), AnyOf("L", "left", "左", "sinister"), AnyOf("R", "right", "右", "dexter"), Gen.Bool),
            Gen.Select(Words, Words, Gen.Bool, Gen.Bool, Words.Array[0, 3]).Array[0, 4])
        .Select((form, sides, parts) => new NamingStyle
        {
            Separator = form.Item1,
            Case = form.Item2,
            Language = form.Item3,
            NumberDigits = form.Item4,
            FirstNumber = form.Item5,
            LongestName = form.Item6,
            Sides = new SideStyle { Place = sides.Item1, Owner = sides.Item2, Left = sides.Item3, Right = sides.Item4, LeftTokens = sides.Item5 ? ["port"] : [], RightTokens = sides.Item5 ? ["starboard", "sb"] : [] },
            Vocabulary = new Vocabulary([.. sides.Item5 || parts.Length == 0 ? Vocabulary.BuiltIn.Parts : [], .. parts.Select((part, i) => new VocabularyPart
            {
                Key = $"part-{i}",
                English = part.Item1,
                Japanese = part.Item2,
                Zone = "head",
                IsPaired = part.Item3,
                IsDetail = part.Item4,
                Synonyms = [.. part.Item5.Distinct()],
            })]),
        });

    private static readonly Gen<LayerProfile> Profiles = Gen.Select(Canvases, Styles, Words,
            Gen.Dictionary(Gen.Enum<Mark>().Where(mark => mark != Mark.None), Gen.Enum<MarkMeaning>())[0, 7],
            Gen.Select(Gen.Int[1, 100_000], Gen.Int[1, 100_000]).Array[1, 3],
            Gen.Select(AnyOf(1024, 2048, 16384), Gen.Int[0, 256], Gen.Bool, Maybe(Gen.Int[1, 99])),
            Maybe(Gen.Enum<Severity>()))
        .Select((canvas, naming, name, marks, screens, textures, severity) => new LayerProfile
        {
            Name = name,
            Description = name + "\nsecond line",
            Canvas = canvas,
            Naming = naming,
            Stack = ["hair-front", "head"],
            Marks = marks,
            Screens = [.. screens.Select((size, i) => new ScreenSize($"Screen {i}", size.Item1, size.Item2))],
            Textures = new TextureProfile { PageSize = textures.Item1, Padding = textures.Item2, Turn = textures.Item3, Pages = textures.Item4 },
            Rules = new Dictionary<string, RuleSetting> { [nameof(LayerTools.Checks.Rules.OddCanvasWidth)] = new(severity, null) },
        });

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void What_was_written_is_read_back() => Profiles.Sample(
        profile =>
        {
            var path = folder["any.layerprofile.json"];
            LayerProfiles.Write(profile, path, overwrite: true);
            Assert.DoesNotContain(LayerProfiles.Check(path), finding => finding.Severity == Severity.Error);
            Assert.Equal(Facts(profile), Facts(LayerProfiles.Read(path)));
        },
        iter: 200, threads: 1);

    [Theory]
    [InlineData("figure")]
    [InlineData("figure-ja")]
    public void Shipped_profiles_come_back_as_they_are(string name)
    {
        var profile = LayerProfiles.FindShipped(name)!;
        LayerProfiles.Write(profile, folder["x.layerprofile.json"], overwrite: false);
        Assert.Equal(Facts(profile), Facts(LayerProfiles.Read(folder["x.layerprofile.json"])));
        Assert.Empty(LayerProfiles.Check(folder["x.layerprofile.json"]));
        Assert.DoesNotContain(".0", File.ReadAllText(folder["x.layerprofile.json"]), StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_comes_along_and_one_that_is_there_stays()
    {
        LayerProfiles.Write(LayerProfiles.Default, folder["x.layerprofile.json"], overwrite: false);
        Assert.Equal(ProfileSchema.ReadText(), File.ReadAllText(folder["layerprofile.schema.json"]));
        File.WriteAllText(folder["layerprofile.schema.json"], "{}");
        LayerProfiles.Write(LayerProfiles.Default, folder["x.layerprofile.json"], overwrite: true);
        Assert.Equal("{}", File.ReadAllText(folder["layerprofile.schema.json"]));
        Assert.Equal(2, Directory.GetFiles(folder.Root).Length);
    }

    [Fact]
    public void A_file_that_is_there_is_refused()
    {
        File.WriteAllText(folder["x.layerprofile.json"], "mine");
        var error = Assert.Throws<LayeredFileException>(() => LayerProfiles.Write(LayerProfiles.Default, folder["x.layerprofile.json"], overwrite: false));
        Assert.Equal(LayeredFileErrorKind.EditRefused, error.Kind);
        Assert.Equal("mine", File.ReadAllText(folder["x.layerprofile.json"]));
    }

    [Fact]
    public void A_profile_against_itself_is_not_written()
    {
        var profile = LayerProfiles.Default with { Canvas = new CanvasProfile { Width = 5001 } };
        Assert.Throws<ProfileException>(() => LayerProfiles.Write(profile, folder["x.layerprofile.json"], overwrite: false));
        Assert.Empty(Directory.GetFiles(folder.Root));
    }

    private static Gen<T> AnyOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<T?> Maybe<T>(Gen<T> values)
        where T : struct => Gen.Select(values, Gen.Bool).Select((value, isThere) => isThere ? value : (T?)null);

    /// <summary>Every public value, by a way of writing that knows nothing of profiles.</summary>
    private static string Facts(LayerProfile profile) => JsonSerializer.Serialize(profile with { Path = null, Rules = new SortedDictionary<string, RuleSetting>(profile.Rules.ToDictionary()), Marks = new SortedDictionary<Mark, MarkMeaning>(profile.Marks.ToDictionary()) });
}
