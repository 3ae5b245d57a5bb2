using System.Globalization;
using CsCheck;
using LayerTools.Names;
using Xunit;

namespace LayerTools.Tests.Names;

public class SideNameTests
{
    /// <summary>Name, side, base name and swapped name. Invented names in the ways people write them.</summary>
    public static TheoryData<string, Side, string, string> Names => new()
    {
        // A letter set off by a delimiter.
        { "Eye L", Side.Left, "Eye", "Eye R" },
        { "Eye R", Side.Right, "Eye", "Eye L" },
        { "L Eye", Side.Left, "Eye", "R Eye" },
        { "R Eye", Side.Right, "Eye", "L Eye" },
        { "eye_l", Side.Left, "eye", "eye_r" },
        { "eye_r", Side.Right, "eye", "eye_l" },
        { "arm.L", Side.Left, "arm", "arm.R" },
        { "arm.r", Side.Right, "arm", "arm.l" },
        { "arm-L", Side.Left, "arm", "arm-R" },
        { "L_arm", Side.Left, "arm", "R_arm" },
        { "r.arm", Side.Right, "arm", "l.arm" },
        { "l-arm", Side.Left, "arm", "r-arm" },
        { "Arm (R)", Side.Right, "Arm", "Arm (L)" },
        { "Arm(L)", Side.Left, "Arm", "Arm(R)" },
        { "(L) Arm", Side.Left, "Arm", "(R) Arm" },
        { "[R]Arm", Side.Right, "Arm", "[L]Arm" },
        { "Arm [l]", Side.Left, "Arm", "Arm [r]" },
        { "Arm {L}", Side.Left, "Arm", "Arm {R}" },
        { "Arm - L", Side.Left, "Arm", "Arm - R" },
        { "Upper arm L", Side.Left, "Upper arm", "Upper arm R" },
        { "Arm: R", Side.Right, "Arm", "Arm: L" },
        { "L/Arm", Side.Left, "Arm", "R/Arm" },
        { "Arm L ", Side.Left, "Arm", "Arm R " },

        // A word set off by a delimiter.
        { "Left arm", Side.Left, "arm", "Right arm" },
        { "right arm", Side.Right, "arm", "left arm" },
        { "LEFT ARM", Side.Left, "ARM", "RIGHT ARM" },
        { "ARM RIGHT", Side.Right, "ARM", "ARM LEFT" },
        { "arm_left", Side.Left, "arm", "arm_right" },
        { "arm.Right", Side.Right, "arm", "arm.Left" },
        { "Arm (left)", Side.Left, "Arm", "Arm (right)" },
        { "left-arm", Side.Left, "arm", "right-arm" },

        // Camel case.
        { "LeftArm", Side.Left, "Arm", "RightArm" },
        { "RightHand", Side.Right, "Hand", "LeftHand" },
        { "leftArm", Side.Left, "Arm", "rightArm" },
        { "armL", Side.Left, "arm", "armR" },
        { "ArmR", Side.Right, "Arm", "ArmL" },
        { "ArmLeft", Side.Left, "Arm", "ArmRight" },
        { "armRight", Side.Right, "arm", "armLeft" },
        { "LArm", Side.Left, "Arm", "RArm" },
        { "rEye", Side.Right, "Eye", "lEye" },
        { "LEFTArm", Side.Left, "Arm", "RIGHTArm" },
        { "finger1L", Side.Left, "finger1", "finger1R" },
        { "Eyelid2Right", Side.Right, "Eyelid2", "Eyelid2Left" },

        // Japanese, and Latin letters next to it.
        { "左腕", Side.Left, "腕", "右腕" },
        { "右手", Side.Right, "手", "左手" },
        { "腕左", Side.Left, "腕", "腕右" },
        { "まつげ右", Side.Right, "まつげ", "まつげ左" },
        { "前髪（左）", Side.Left, "前髪", "前髪（右）" },
        { "前髪【右】", Side.Right, "前髪", "前髪【左】" },
        { "左_腕", Side.Left, "腕", "右_腕" },
        { "腕・左", Side.Left, "腕", "腕・右" },
        { "目L", Side.Left, "目", "目R" },
        { "L目", Side.Left, "目", "R目" },
        { "カラーR", Side.Right, "カラー", "カラーL" },
        { "腕Ｌ", Side.Left, "腕", "腕Ｒ" },
        { "ｒ腕", Side.Right, "腕", "ｌ腕" },
        { "目left", Side.Left, "目", "目right" },
        { "Arm左", Side.Left, "Arm", "Arm右" },
        { "左腕 01", Side.Left, "腕 01", "右腕 01" },
        { "右目のコピー 2", Side.Right, "目のコピー 2", "左目のコピー 2" },
        { "目Lのコピー", Side.Left, "目のコピー", "目Rのコピー" },
        { "か\u3099L", Side.Left, "か\u3099", "か\u3099R" },

        // Numbers, versions and copies beside the token.
        { "Finger_L_01", Side.Left, "Finger_01", "Finger_R_01" },
        { "Eye L 2", Side.Left, "Eye 2", "Eye R 2" },
        { "Eye L2", Side.Left, "Eye 2", "Eye R2" },
        { "fingerR03", Side.Right, "finger03", "fingerL03" },
        { "LeftArm2", Side.Left, "Arm2", "RightArm2" },
        { "arm_right02", Side.Right, "arm_02", "arm_left02" },
        { "Arm L copy", Side.Left, "Arm copy", "Arm R copy" },
        { "Arm L copy 3", Side.Left, "Arm copy 3", "Arm R copy 3" },
        { "Arm_R_COPY", Side.Right, "Arm_COPY", "Arm_L_COPY" },
        { "Arm (L) 2", Side.Left, "Arm 2", "Arm (R) 2" },
        { "Arm_L_v2", Side.Left, "Arm_v2", "Arm_R_v2" },
        { "Arm R (1)", Side.Right, "Arm (1)", "Arm L (1)" },
        { "Arm L [OK]", Side.Left, "Arm [OK]", "Arm R [OK]" },
        { "腕右（仮）2", Side.Right, "腕（仮）2", "腕左（仮）2" },
        { "[WIP] Left arm", Side.Left, "[WIP] arm", "[WIP] Right arm" },
        { "Arm L (", Side.Left, "Arm (", "Arm R (" },
        { "01_L_Arm", Side.Left, "01_Arm", "01_R_Arm" },
        { "2. Right arm", Side.Right, "2 arm", "2. Left arm" },
        { "01左腕", Side.Left, "01腕", "01右腕" },

        // The side alone, and said twice.
        { "L", Side.Left, "", "R" },
        { "Right", Side.Right, "", "Left" },
        { "左", Side.Left, "", "右" },
        { "(R)", Side.Right, "", "(L)" },
        { ".L", Side.Left, "", ".R" },
        { "_l", Side.Left, "", "_r" },
        { "L 1", Side.Left, "1", "R 1" },
        { "左腕 L", Side.Left, "腕", "右腕 R" },
        { "L_Arm_L", Side.Left, "Arm", "R_Arm_R" },
        { "❤️ L", Side.Left, "❤️", "❤️ R" },
        { "🌸L", Side.Left, "🌸", "🌸R" },
        { "Café L", Side.Left, "Café", "Café R" },

        // Inside words, elisions and abbreviations there is no side.
        { "Lip", Side.None, "Lip", "Lip" },
        { "Rose", Side.None, "Rose", "Rose" },
        { "Collar", Side.None, "Collar", "Collar" },
        { "Bright", Side.None, "Bright", "Bright" },
        { "Leftover", Side.None, "Leftover", "Leftover" },
        { "LEFTOVER", Side.None, "LEFTOVER", "LEFTOVER" },
        { "Rightful", Side.None, "Rightful", "Rightful" },
        { "Lily", Side.None, "Lily", "Lily" },
        { "XL", Side.None, "XL", "XL" },
        { "HTML", Side.None, "HTML", "HTML" },
        { "RGB", Side.None, "RGB", "RGB" },
        { "LED", Side.None, "LED", "LED" },
        { "Upright", Side.None, "Upright", "Upright" },
        { "cleft", Side.None, "cleft", "cleft" },
        { "Copyright", Side.None, "Copyright", "Copyright" },
        { "Hair", Side.None, "Hair", "Hair" },
        { "Tail", Side.None, "Tail", "Tail" },
        { "armleft", Side.None, "armleft", "armleft" },
        { "L'oeil", Side.None, "L'oeil", "L'oeil" },
        { "R&D", Side.None, "R&D", "R&D" },
        { "Lèvre", Side.None, "Lèvre", "Lèvre" },
        { "Le\u0300vre", Side.None, "Le\u0300vre", "Le\u0300vre" },
        { "L2", Side.None, "L2", "L2" },
        { "R01", Side.None, "R01", "R01" },
        { "Layer 37", Side.None, "Layer 37", "Layer 37" },
        { "Rear hair", Side.None, "Rear hair", "Rear hair" },
        { "Hair LR", Side.None, "Hair LR", "Hair LR" },
        { "İL", Side.None, "İL", "İL" },
        { "  ", Side.None, "  ", "  " },
        { "", Side.None, "", "" },

        // In the middle there is none, and both sides are none.
        { "Arm_L_upper", Side.None, "Arm_L_upper", "Arm_L_upper" },
        { "前髪_左_影", Side.None, "前髪_左_影", "前髪_左_影" },
        { "Arm L (R pose)", Side.None, "Arm L (R pose)", "Arm L (R pose)" },
        { "Face (left eye)", Side.None, "Face (left eye)", "Face (left eye)" },
        { "左右", Side.None, "左右", "左右" },
        { "左右の目", Side.None, "左右の目", "左右の目" },
        { "Eyes L+R", Side.None, "Eyes L+R", "Eyes L+R" },
        { "L/R", Side.None, "L/R", "L/R" },
        { "Left and right", Side.None, "Left and right", "Left and right" },
        { "左腕_R", Side.None, "左腕_R", "左腕_R" },
        { "L hand on R knee", Side.None, "L hand on R knee", "L hand on R knee" },
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void Parse_and_swap(string name, Side side, string baseName, string swapped)
    {
        foreach (var culture in new[] { "", "tr-TR", "ja-JP" })
        {
            var before = CultureInfo.CurrentCulture;
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            try
            {
                var parsed = SideName.Parse(name);
                Assert.Equal((side, baseName, swapped), (parsed.Side, parsed.BaseName, parsed.SwapSide()));
                Assert.Equal(name, SideName.Swap(swapped));
            }
            finally
            {
                CultureInfo.CurrentCulture = before;
            }
        }
    }

    [Fact]
    public void Swapping_turns_the_side_keeps_the_base_and_is_its_own_inverse()
    {
        string[] pieces =
        [
            "L", "R", "l", "r", "left", "right", "Left", "Right", "LEFT", "RIGHT", "左", "右", "Ｌ", "ｒ", " ", "_", ".", "-", "(", ")", "（", "）",
            "Arm", "arm", "ARM", "over", "腕", "ー", "copy", "1", "02", "v", "'", "&", "/", "\u0301", "\ufe0f", "🌸", "é", "İ", "ǅ", "ひ",
        ];
        Gen.Int[0, pieces.Length - 1].Select(i => pieces[i]).Array[0, 7].Select(string.Concat).Sample(name =>
        {
            var parsed = SideName.Parse(name);
            var swapped = SideName.Parse(parsed.SwapSide());
            Assert.Equal(name, swapped.SwapSide());
            Assert.Equal(parsed.BaseName, swapped.BaseName);
            Assert.Equal(parsed.Side == Side.None ? Side.None : parsed.Side == Side.Left ? Side.Right : Side.Left, swapped.Side);
        }, iter: 20_000);
    }

    [Fact]
    public void Parse_of_a_long_hostile_name_takes_no_time()
    {
        var name = string.Concat(Enumerable.Repeat(" copy(1)v2 (copy) ", 20_000)) + "x";

        Assert.Equal(Side.Left, SideName.Parse("L " + name).Side);
        Assert.Equal(Side.None, SideName.Parse("x L " + name).Side);
        Assert.Equal(Side.None, SideName.Parse(name + " L " + name).Side);
    }
}
