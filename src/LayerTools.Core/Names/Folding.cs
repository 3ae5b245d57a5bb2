using System.Text;

namespace LayerTools.Names;

/// <summary>What makes two spellings of a word one: case, width, hiragana and katakana, and what joins words.</summary>
internal static class Folding
{
    /// <summary>What stands between the words of a name.</summary>
    public const string Joints = " _-.:,;~+|/\\　＿－．・：、〜。=\t";

    /// <summary>The spelling by which words are looked up; empty for a text of joints alone.</summary>
    public static string Fold(string text)
    {
        var wide = Width.Fold(text);
        var folded = new StringBuilder(wide.Length);
        for (var i = 0; i < wide.Length; i++)
        {
            if (!Joints.Contains(wide[i]) && !IsParticle(wide, i)) folded.Append(FoldKana(char.ToLowerInvariant(wide[i])));
        }

        return folded.ToString();
    }

    /// <summary>Whether the character is the particle that joins two nouns (袖の裏) and not part of a word (ほのお).</summary>
    public static bool IsParticle(string text, int at) =>
        text[at] == 'の' && at > 0 && at + 1 < text.Length && !(IsHiragana(text[at - 1]) && IsHiragana(text[at + 1]));

    public static bool IsHiragana(char c) => c is >= 'ぁ' and <= 'ゖ';

    public static bool IsKatakana(char c) => c is >= 'ァ' and <= 'ヺ' or 'ー';

    private static char FoldKana(char c) => IsHiragana(c) ? (char)(c - 'ぁ' + 'ァ') : c;
}
