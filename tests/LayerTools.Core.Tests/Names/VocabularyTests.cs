using LayerTools.Names;
using LayerTools.Profiles;
using Xunit;

namespace LayerTools.Tests.Names;

public class VocabularyTests
{
    public static TheoryData<string, string> Spellings => new()
    {
        { "eyelash", "eyelash" },
        { "Eye-Lashes", "eyelash" },
        { "EYE LASH", "eyelash" },
        { "eye_lash", "eyelash" },
        { "ｅｙｅｌａｓｈ", "eyelash" },
        { "まつげ", "eyelash" },
        { "マツゲ", "eyelash" },
        { "ﾏﾂｹﾞ", "eyelash" },
        { "マツケ\u3099", "eyelash" },
        { "前髪", "hair-front" },
        { "髪の毛 前", "hair-front" },
        { "Bangs", "hair-front" },
        { "袖の裏", "sleeve-back" },
        { "tooth", "teeth" },
        { "scarves", "scarf" },
        { "knees", "knee" },
        { "irises", "iris" },
        { "iris", "iris" },
        { "feet", "foot" },
        { "ほのお", "flame" },
        { "dresses", "dress" },
    };

    [Theory]
    [MemberData(nameof(Spellings))]
    public void OneWordIsFoundInAnySpelling(string words, string key) => Assert.Equal(key, Vocabulary.BuiltIn.Find(words)?.Key);

    [Theory]
    [InlineData("")]
    [InlineData(" _-")]
    [InlineData("Layer")]
    [InlineData("short")]
    [InlineData("arms and more words than any part has in its name")]
    public void OtherWordsAreNotFound(string words) => Assert.Null(Vocabulary.BuiltIn.Find(words));

    [Fact]
    public void BuiltInPartsHaveDifferentKeysAndNoWordTwice()
    {
        var parts = Vocabulary.BuiltIn.Parts;
        Assert.True(parts.Count >= 120);
        Assert.Equal(parts.Count, parts.Select(part => part.Key).Distinct().Count());
        var words = parts.SelectMany(part => new[] { part.English, part.Japanese }.Concat(part.Synonyms).Select(Folding.Fold).Select(word => (word, part.Key))).ToList();
        Assert.Empty(words.GroupBy(item => item.word).Where(same => same.Count() > 1).Select(same => string.Join(", ", same)));
        Assert.DoesNotContain(words, item => item.word.Length == 0);
    }

    [Fact]
    public void EachWordFindsItsPart()
    {
        Assert.All(Vocabulary.BuiltIn.Parts, part => Assert.All(
            new[] { part.English, part.Japanese }.Concat(part.Synonyms), word => Assert.Same(part, Vocabulary.BuiltIn.Find(word.ToUpperInvariant()))));
    }

    [Fact]
    public void ShadeAndLinesAreThoseOfThePartThatTheyAreNamedFor()
    {
        var vocabulary = Vocabulary.BuiltIn;
        var endings = vocabulary.Parts.Where(part => part.Key is "shade" or "line").SelectMany(part => part.Synonyms.Prepend(part.English).Prepend(part.Japanese)).ToList();
        var named =
            from part in vocabulary.Parts
            where !part.IsDetail
            from word in part.Synonyms.Prepend(part.English).Prepend(part.Japanese)
            from ending in endings
            where word.Length > ending.Length && word.EndsWith(ending, StringComparison.Ordinal)
            let owner = vocabulary.Find(word.Remove(word.Length - ending.Length))
            where owner is { IsDetail: false }
            select (Word: word, Part: part.Key.Split('-')[0], Owner: owner.Key.Split('-')[0]);
        Assert.NotEmpty(named);
        Assert.DoesNotContain(named, item => item.Part != item.Owner);
    }

    [Fact]
    public void KeysAndEnglishWordsAreInLowerCase()
    {
        Assert.All(Vocabulary.BuiltIn.Parts, part =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", part.Key);
            Assert.Matches("^[a-z ]+$", part.English);
            Assert.Matches("^[a-z]+(-[a-z]+)*$", part.Zone);
        });
    }

    [Fact]
    public void ZonesAreThoseOfTheDefaultStack()
    {
        // "anywhere" is for details, such as buttons, which lie wherever their part does.
        var zones = Vocabulary.BuiltIn.Parts.Select(part => part.Zone).Distinct().Where(zone => zone != "anywhere").Order(StringComparer.Ordinal);
        Assert.All(LayerProfiles.Shipped, profile => Assert.Equal(profile.Stack.Order(StringComparer.Ordinal), zones));
        Assert.All(Vocabulary.BuiltIn.Parts.Where(part => part.IsDetail), part => Assert.Equal("anywhere", part.Zone));
    }

    [Fact]
    public void LaterPartsTakeWordsOver()
    {
        var cap = new VocabularyPart { Key = "cap", English = "cap", Japanese = "キャップ", Zone = "headwear" };
        var words = new Vocabulary([.. Vocabulary.BuiltIn.Parts, cap]);
        Assert.Same(cap, words.Find("Cap"));
        Assert.Equal("hat", words.Find("hat")?.Key);
    }
}
