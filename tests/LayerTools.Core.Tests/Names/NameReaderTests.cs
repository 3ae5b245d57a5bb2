using System.Diagnostics;
using CsCheck;
using LayerTools.Names;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Names;

public class NameReaderTests
{
    private static readonly NameReader Reader = new(new NamingStyle { Vocabulary = Vocabulary.BuiltIn });

    /// <summary>Name, key of the part, side, number (-1 for none) and rest. Invented names in the ways people write them.</summary>
    public static TheoryData<string, string, Side, int, string> Names => new()
    {
        { "Arm", "arm", Side.None, -1, "" },
        { "upper arm L", "upper-arm", Side.Left, -1, "" },
        { "UpperArmL", "upper-arm", Side.Left, -1, "" },
        { "upperArm_l_02", "upper-arm", Side.Left, 2, "" },
        { "Finger_L_01", "finger", Side.Left, 1, "" },
        { "01_L_Finger", "finger", Side.Left, 1, "" },
        { "髪の毛 前3", "hair-front", Side.None, 3, "" },
        { "前髪３", "hair-front", Side.None, 3, "" },
        { "左前髪先②", "hair-front", Side.Left, 2, "先" },
        { "腕L", "arm", Side.Left, -1, "" },
        { "Hair Front Tip L 2", "hair-front", Side.Left, 2, "tip" },
        { "HAIR_FRONT_TIP_L_2", "hair-front", Side.Left, 2, "tip" },
        { "front hair tip", "hair-front", Side.None, -1, "tip" },
        { "Hair long back", "hair-back", Side.None, -1, "long" },
        { "髪 後ろ", "hair-back", Side.None, -1, "" },
        { "コートの裏", "coat-back", Side.None, -1, "" },
        { "Arm_L_upper", "upper-arm", Side.Left, -1, "" },
        { "Arm Sleeve", "sleeve", Side.None, -1, "arm" },
        { "hair shadow copy", "hair-shadow", Side.None, -1, "" },
        { "髪影", "hair-shadow", Side.None, -1, "" },
        { "Shadow of the hair", "hair", Side.None, -1, "shadow" },
        { "back of the hair", "hair-back", Side.None, -1, "" },
        { "Back of the head", "head", Side.None, -1, "back" },
        { "Sleeve of the arm R", "sleeve", Side.Right, -1, "arm" },
        { "Eye shadow L", "eye-shadow", Side.Left, -1, "" },
        { "Eye line L", "eye", Side.Left, -1, "line" },
        { "Chin shadow", "jaw", Side.None, -1, "shadow" },
        { "Coat lining", "lining", Side.None, -1, "coat" },
        { "Fist L", "fist", Side.Left, -1, "" },
        { "Jacket back", "jacket-back", Side.None, -1, "" },
        { "Sleeve of arm R", "sleeve", Side.Right, -1, "arm" },
        { "Coat button 2", "coat", Side.None, 2, "button" },
        { "Button", "button", Side.None, -1, "" },
        { "Eye L copy 3", "eye", Side.Left, -1, "" },
        { "Copy of Hat", "hat", Side.None, -1, "" },
        { "髪の毛 前3 のコピー 2", "hair-front", Side.None, 3, "" },
        { "前髪のコピー", "hair-front", Side.None, -1, "" },
        { "Iris v2", "iris", Side.None, -1, "v2" },
        { "Hair A", "hair", Side.None, -1, "A" },
        { "Glow FX sword", "sword", Side.None, -1, "glow FX" },
        { "Finger 2 joint 3", "finger", Side.None, 3, "2 joint" },
        { "ブラックの髪", "hair", Side.None, -1, "ブラック" },
        { "まつげ_上_右", "upper-eyelash", Side.Right, -1, "" },
        { "Lower Lashes (R)", "lower-eyelash", Side.Right, -1, "" },
        { "スカートフリル", "skirt", Side.None, -1, "フリル" },
        { "手前の腕", "arm", Side.None, -1, "手前" },
        { "前髪 (Hair front)", "hair-front", Side.None, -1, "" },
        { "Eye★L", "eye", Side.Left, -1, "★" },
        { "Nora’s hat", "hat", Side.None, -1, "nora’s" },
        { "Arm L R", "arm", Side.None, -1, "L R" },
        { "Arm 2left", "arm", Side.Left, 2, "" },
        { "2RightArm", "arm", Side.Right, 2, "" },
        { "Arm 2l", "arm", Side.None, -1, "2l" },
        { "Hand 3D", "hand", Side.None, -1, "3D" },
        { "Tooth 1234567890", "teeth", Side.None, -1, "1234567890" },
    };

    private static readonly string[] Words = ["L", "R", " ", "_", "left", "Right", "左", "Arm", "腕", "2", "copy", "(", ")", "v2", "FX", "'s"];

    public static TheoryData<string> DefaultNamesOfPrograms => ["Layer 37", "layer37", "レイヤー 12", "レイヤー12 のコピー 2", "Group 4", "Ebene 3 Kopie", "グループ１", "Calque 2", "12", "", "  ", "Shape 1 copy", "图层 5"];

    [Theory]
    [MemberData(nameof(Names))]
    public void TakesNamesApart(string name, string key, Side side, int number, string rest)
    {
        var read = Reader.Read(name);
        Assert.Equal((key, side, number, rest), (read.Part?.Key, read.Side, read.Number ?? -1, read.Rest));
        Assert.Equal(name, read.Text);
        Assert.InRange(read.Certainty, 0.5, 1);
        Assert.NotEmpty(read.Reasons);
        Assert.All(read.Reasons, reason => Assert.EndsWith(".", reason, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(DefaultNamesOfPrograms))]
    public void UnderstandsNothingByDefaultNames(string name)
    {
        Assert.True(DefaultNames.IsDefault(name));
        var read = Reader.Read(name);
        Assert.Null(read.Part);
        Assert.Equal(0, read.Certainty);
    }

    [Theory]
    [InlineData("Zorp L", Side.Left)]
    [InlineData("ブラック", Side.None)]
    [InlineData("L", Side.Left)]
    [InlineData("L2", Side.None)]
    [InlineData("...", Side.None)]
    public void LeavesWhatNobodyKnows(string name, Side side)
    {
        var read = Reader.Read(name);
        Assert.Null(read.Part);
        Assert.Equal((side, 0.0), (read.Side, read.Certainty));
    }

    [Fact]
    public void UnderstandsTheNamesOfTheInventedFigure()
    {
        var rows = File.ReadAllLines(Path.Combine(SharedFiles.FindFolder("tests"), "Figure", "names.csv")).Skip(1).Select(line => line.Split(',')).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Equal(DefaultNames.IsDefault(row[0]), Reader.Read(row[0]).Part is null));
    }

    [Fact]
    public void IsLessSureTheMoreItGuesses()
    {
        var names = new[] { "Hair front L", "Bangs L", "Bangs tip L", "Bangs zorp L", "Bangs hat L", "Bangs zorp hat L", "Layer 2" };
        var certainties = names.Select(name => Reader.Read(name).Certainty).ToList();
        Assert.Equal(1, certainties[0]);
        Assert.Equal(certainties.OrderByDescending(certainty => certainty).Distinct(), certainties);
    }

    [Fact]
    public void SaysWhy()
    {
        var read = Reader.Read("Bangs zorp L 2 copy");
        Assert.Equal(
            ["'copy' only says that it is a copy.", "'L' says left.", "2 is its number.", "'Bangs' is a word for hair-front.", "'zorp' is in no vocabulary and is kept."],
            read.Reasons);
    }

    [Fact]
    public void KnowsTheProfilesOwnSideTokens()
    {
        var own = new NameReader(new NamingStyle { Vocabulary = Vocabulary.BuiltIn, Sides = new SideStyle { LeftTokens = ["sx"], RightTokens = ["dx"] } });
        Assert.Equal((Side.Left, "arm"), (own.Read("arm_sx").Side, own.Read("arm_sx").Part?.Key));
        Assert.Equal(Side.Right, own.Read("DX arm 2").Side);
        Assert.Equal(Side.Right, own.Read("arm R").Side);
    }

    [Fact]
    public void AgreesWithLayersAboutSides() => Gen.OneOf(Gen.String, Gen.Int[0, Words.Length - 1].Select(i => Words[i]).Array[1, 6].Select(string.Concat))
        .Sample(name =>
        {
            var side = SideName.Parse(name).Side;
            return side == Side.None || Reader.Read(name).Side == side;
        });

    [Fact]
    public void ReadsAnyTextInNoTime()
    {
        Gen.String.Sample(name => Reader.Read(name).Text == name);
        var watch = Stopwatch.StartNew();
        foreach (var piece in new[] { "前", "まつ", "a", "A", "e\u0301", "1", "L ", "の", "('", "eye ", "カ\u3099" }) Reader.Read(string.Concat(Enumerable.Repeat(piece, 1000 / piece.Length)));
        Reader.Read(new string('前', 1_000_000));
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), "Reading must not take longer the odder the name is.");
    }

    [Fact]
    public void ReadsTheSameInEveryCulture()
    {
        var culture = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            foreach (var name in new[] { "tr-TR", "ja-JP", "de-DE" })
            {
                System.Globalization.CultureInfo.CurrentCulture = new System.Globalization.CultureInfo(name);
                Assert.Equal("iris", Reader.Read("IRIS I").Part?.Key);
            }
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = culture;
        }
    }
}
