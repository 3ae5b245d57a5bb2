using CsCheck;
using LayerTools.Edits;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Edits;

public class NormalizeEditTests
{
    private static readonly string[] Words =
    [
        "hair", "Hair", "front", "bangs", "arm", "Arm", "sleeve", "eye", "lash", "upper", "tip", "zorp", "FX", "A", "L", "R", "left", "l", "copy", "1", "2", "02", "10", "v2",
        "前髪", "腕", "左", "先", "の", "コピー", "ブラック", " ", " ", "_", "-", "(", ")", "of", "button", "Layer", "レイヤー", "3D", "★", "'s", "髪の毛", "前", "ﾏﾂｹﾞ",
    ];

    private static readonly Gen<string> Name = Gen.OneOf(Gen.Int[0, Words.Length - 1].Select(i => Words[i]).Array[1, 6].Select(string.Concat), Gen.String[1, 8]);

    // Few different names in a group, so that many collide.
    private static readonly Gen<Layer> Group = Gen.Select(Name.Array[1, 3], Gen.Int[0, 100].Array[1, 8]).Select((names, picks) =>
        ModelBuilder.Group(names[0], [.. picks.Select(pick => ModelBuilder.Pixel(names[pick % names.Length] + (pick > 60 ? " copy" : "")))]));

    private static readonly Gen<NamingStyle> Style = Gen.Select(Gen.Int[0, 5], Gen.Int[0, 3], Gen.Bool, Gen.Bool, Gen.Int[1, 3], Gen.Int[0, 1]).Select((letters, separator, japanese, start, digits, first) => new NamingStyle
    {
        Vocabulary = Vocabulary.BuiltIn,
        Case = (NameCase)letters,
        Separator = new[] { " ", "_", "-", "" }[separator],
        Language = japanese ? NameLanguage.Japanese : NameLanguage.English,
        Sides = new SideStyle { Place = start ? SidePlace.Start : SidePlace.End, Left = japanese ? "左" : "L", Right = japanese ? "右" : "R" },
        NumberDigits = digits,
        FirstNumber = first,
        LongestName = 40,
    });

    private static NamingStyle English => LayerProfiles.Default.Naming;

    [Fact]
    public void TwiceIsOnce() => Gen.Select(Group.Array[1, 3], Style).Sample((groups, style) =>
    {
        var file = ModelBuilder.File(groups);
        var before = Names(file);
        Normalize(file, style);
        AssertNoneIsMerged(file, before);
        var once = Names(file);
        Normalize(file, style);
        Assert.Equal(once, Names(file));
    });

    [Fact]
    public void TwiceIsOnceOverSeveralFiles() => Gen.Select(Group, Group, Style).Sample((one, two, style) =>
    {
        two.Name = one.Name;
        LayerFile[] files = [ModelBuilder.File(one), ModelBuilder.File(two)];
        var before = files.Select(Names).ToList();
        NormalizeTogether(style, files);
        for (var i = 0; i < files.Length; i++) AssertNoneIsMerged(files[i], before[i]);
        var once = files.SelectMany(Names).ToList();
        NormalizeTogether(style, files);
        Assert.Equal(once, files.SelectMany(Names));
    });

    [Theory]
    [InlineData("Arm copy, Arm copy 2, Arm", "Arm 1, Arm 2, Arm 3")]
    [InlineData("Arm 3, arm_2, Arm", "Arm 3, Arm 2, Arm 1")]
    [InlineData("Arm 2, Arm 2 copy, arm02", "Arm 2, Arm 1, Arm 3")]
    [InlineData("Arm 7", "Arm 7")]
    [InlineData("Arm copy 7", "Arm")]
    [InlineData("bangs, front hair", "Hair front 1, Hair front 2")]
    [InlineData("bangs L, bangs R", "Hair front L, Hair front R")]
    [InlineData("Zorp, Layer 3, hat", "Zorp, Layer 3, Hat")]
    [InlineData("Arm sleeve of Zorp Blim the Third King, hat", "Arm sleeve of Zorp Blim the Third King, Hat")]
    public void NumbersLayersOfOneName(string before, string after)
    {
        var file = ModelBuilder.File([.. before.Split(", ").Select(name => ModelBuilder.Pixel(name))]);
        Normalize(file, English);
        Assert.Equal(after, string.Join(", ", Names(file)));
    }

    [Fact]
    public void NumbersEachGroupOnItsOwn()
    {
        var file = ModelBuilder.File(ModelBuilder.Group("hairs", ModelBuilder.Pixel("bangs"), ModelBuilder.Pixel("bangs copy")), ModelBuilder.Group("Face", ModelBuilder.Pixel("bangs")));
        Normalize(file, English);
        Assert.Equal(["Hair", "Hair front 1", "Hair front 2", "Face", "Hair front"], Names(file));
    }

    [Fact]
    public void KeepsAwayFromTheNamesOfLayersThatWereNotChosen()
    {
        var file = ModelBuilder.File(ModelBuilder.Pixel("Arm"), ModelBuilder.Pixel("arm copy"), ModelBuilder.Pixel("Arm 1"));
        var plan = new NormalizeEdit(English).Plan(file, [file.GetChildren()[1]]);
        plan.Apply();
        Assert.Equal(["Arm", "Arm 2", "Arm 1"], Names(file));
        Assert.Equal(("Name", "arm copy", "Arm 2"), (plan.Steps[0].Property, plan.Steps[0].Old, plan.Steps[0].New));
        Assert.False(plan.ChangesPicture);
    }

    [Fact]
    public void OneFileDoesNotDependOnOthersUnlessAsked()
    {
        LayerFile[] Create() =>
        [
            ModelBuilder.File(ModelBuilder.Group("Hair", ModelBuilder.Pixel("bangs"), ModelBuilder.Pixel("front hair"))),
            ModelBuilder.File(ModelBuilder.Group("hairs", ModelBuilder.Pixel("Front hair"), ModelBuilder.Pixel("fringe"), ModelBuilder.Pixel("bangs"))),
            ModelBuilder.File(ModelBuilder.Group("Hair", ModelBuilder.Pixel("FrontHair"))),
        ];

        var alone = Create();
        foreach (var file in alone) Normalize(file, English);
        Assert.Equal(["Hair", "Hair front"], Names(alone[2]));

        var together = Create();
        NormalizeTogether(English, together);
        Assert.Equal(["Hair", "Hair front 1", "Hair front 2"], Names(together[0]));
        Assert.Equal(["Hair", "Hair front 2", "Hair front 3", "Hair front 1"], Names(together[1]));
        Assert.Equal(["Hair", "Hair front 2"], Names(together[2]));
    }

    [Fact]
    public void AloneInEachFileNeedsNoNumber()
    {
        LayerFile[] files = [ModelBuilder.File(ModelBuilder.Pixel("bangs")), ModelBuilder.File(ModelBuilder.Pixel("front hair"))];
        NormalizeTogether(English, files);
        Assert.Equal(["Hair front", "Hair front"], files.SelectMany(Names));
    }

    [Fact]
    public void ListsWhatItDoesNotUnderstand()
    {
        var file = ModelBuilder.File([.. new[] { "Zorp", "Layer 3", "Hat", "Blim", "Nix", "Wuu", "Yat" }.Select(name => ModelBuilder.Pixel(name))]);
        var edit = new NormalizeEdit(English);
        var warning = Assert.Single(edit.Plan(file, file.GetChildren()).Warnings);
        Assert.StartsWith("6 names are not understood and stay: 'Zorp', 'Layer 3', 'Blim', 'Nix', 'Wuu' and 1 more.", warning, StringComparison.Ordinal);

        var rows = edit.Explain(file, file.GetChildren());
        Assert.Equal(7, rows.Count);
        Assert.Equal((null, 0.0, "The vocabulary has none of its words."), (rows[0].New, rows[0].Certainty, rows[0].Why));
        Assert.Equal(("Hat", 1.0), (rows[2].New, rows[2].Certainty));
    }

    private static void Normalize(LayerFile file, NamingStyle style) => new NormalizeEdit(style).Plan(file, [.. file.GetLayers()]).Apply();

    private static void NormalizeTogether(NamingStyle style, IReadOnlyList<LayerFile> files)
    {
        var edit = NormalizeEdit.Consistent(style, [.. files.Select(file => file.GetLayers().ToList())]);
        foreach (var file in files) edit.Plan(file, [.. file.GetLayers()]).Apply();
    }

    private static List<string> Names(LayerFile file) => [.. file.GetLayers().Select(layer => layer.Name)];

    /// <summary>Layers that share a name in their group have their old names, and had the same ones before.</summary>
    private static void AssertNoneIsMerged(LayerFile file, List<string> before)
    {
        var old = file.GetLayers().Zip(before).ToDictionary(pair => pair.First, pair => pair.Second);
        foreach (var group in file.GetLayers().GroupBy(layer => layer.Parent))
        {
            foreach (var same in group.GroupBy(layer => layer.Name, StringComparer.OrdinalIgnoreCase).Where(same => same.Count() > 1))
            {
                Assert.All(same, layer => Assert.Equal(old[layer], layer.Name));
            }
        }
    }
}
