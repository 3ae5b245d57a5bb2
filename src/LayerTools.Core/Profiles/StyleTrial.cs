using LayerTools.Checks;
using LayerTools.Json;
using LayerTools.Names;

namespace LayerTools.Profiles;

/// <summary>Finds styles whose names cannot be read again.</summary>
internal static class StyleTrial
{
    /// <summary>So many words are tried.</summary>
    private const int Samples = 40;

    /// <summary>Writes some words with a side and a number and reads them again.</summary>
    public static IEnumerable<ProfileFinding> Run(ProfileDocument document, NamingStyle style)
    {
        var json = document.Root["naming"];
        var words = style.Vocabulary.Parts.Where(part => style.Vocabulary.Find(style.Language == NameLanguage.English ? part.English : part.Japanese) == part).ToList();
        var (writer, reader) = (new NameWriter(style), new NameReader(style));
        for (var i = 0; i < Math.Min(Samples, words.Count); i++)
        {
            var part = words[(int)((long)i * words.Count / Math.Min(Samples, words.Count))];
            var side = i % 2 == 0 ? Side.Left : Side.Right;
            var name = writer.Write(new ParsedName { Text = string.Empty, Part = part, Side = side }, style.FirstNumber + 1);
            var read = reader.Read(name);
            if (read.Part == part && read.Side == side && read.Number == style.FirstNumber + 1) continue;
            yield return document.Find(json?["separator"] ?? json ?? document.Root, Severity.Warning, $"The {JsonWords.Of(side)} '{part.Key}' is written '{name}', and that is not read as such again.",
                "Write another separator, other words for sides, or another case.");
            yield break;
        }
    }
}
