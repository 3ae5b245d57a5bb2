using LayerTools.Sheets.Text;

namespace LayerTools.Sheets.Tests.Text;

public class FontRankingTests
{
    [Theory]
    [InlineData("/f/NotoSansCJK-Regular.ttc", "/f/NotoSerifCJK-Regular.ttc", false, false)]
    [InlineData("/f/NotoSansCJK-Regular.ttc", "/f/NotoSansCJK-Bold.ttc", false, false)]
    [InlineData("/f/NotoSansCJK-Bold.ttc", "/f/NotoSansCJK-Regular.ttc", true, false)]
    [InlineData("/f/NotoColorEmoji.ttf", "/f/NotoSans-Regular.ttf", false, true)]
    [InlineData("/f/NotoSerif-Regular.ttf", "/f/NotoColorEmoji.ttf", false, false)]
    [InlineData("/f/NotoSans-Regular.ttf", "/f/NotoSans-Italic.ttf", false, false)]
    [InlineData("/f/NotoSansThai-Regular.ttf", "/f/NotoSansThai-ExtraCondensedLight.ttf", false, false)]
    public void The_first_is_taken_before_the_second(string better, string worse, bool bold, bool emoji) =>
        Assert.True(FontRanking.Rate(better, bold, emoji) < FontRanking.Rate(worse, bold, emoji));
}
