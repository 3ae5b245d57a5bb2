using System.Text;
using LayerTools.Checks;
using LayerTools.Errors;
using LayerTools.Names;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>The text of a profile as JSON whose values know their places.</summary>
internal sealed class ProfileDocument
{
    /// <summary>Most bytes of a profile; one with a thousand words of its own has some 100,000.</summary>
    private const int LargestFile = 1 << 20;

    private ProfileDocument(string path, JToken root)
    {
        Path = path;
        Root = root;
    }

    /// <summary>The file, or the name of a profile that ships with the module.</summary>
    public string Path { get; }

    public JToken Root { get; }

    /// <exception cref="ProfileException">The text is no JSON.</exception>
    /// <exception cref="LayeredFileException">The file cannot be opened, or is too large for a profile.</exception>
    public static ProfileDocument Read(string path) => FileAccessErrors.Wrap(path, () =>
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return Read(path, stream);
    });

    /// <inheritdoc cref="Read(string)"/>
    public static ProfileDocument Read(string path, Stream stream)
    {
        var bytes = new byte[LargestFile + 1];
        var count = 0;
        while (count < bytes.Length && stream.Read(bytes, count, bytes.Length - count) is > 0 and var read) count += read;
        if (count > LargestFile)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, path, "profile", -1,
                FormattableString.Invariant($"A profile has at most {LargestFile} bytes, and this file has more."), $"Name a *{LayerProfiles.Extension} file.");
        }

        return Parse(path, Decode(path, bytes, count));
    }

    /// <summary>Something that is wrong with a value.</summary>
    public ProfileFinding Find(JToken token, Severity severity, string message, string remedy)
    {
        var place = token.Annotation<TextPlace>()!;
        return CreateFinding(Path, severity, JsonPath.Of(token), place, message, remedy);
    }

    private static ProfileFinding CreateFinding(string path, Severity severity, string jsonPath, TextPlace place, string message, string remedy) => new()
    {
        Severity = severity,
        JsonPath = PrintableText.Of(jsonPath),
        Line = place.Line,
        Column = place.Column,
        Message = PrintableText.Of(message),
        Remedy = PrintableText.Of(remedy),
        FilePath = path,
    };

    private static string Decode(string path, byte[] bytes, int count)
    {
        try
        {
            using var reader = new StreamReader(new MemoryStream(bytes, 0, count), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true), detectEncodingFromByteOrderMarks: true);
            return reader.ReadToEnd();
        }
        catch (DecoderFallbackException)
        {
            throw Refuse(path, JsonPath.Root, new TextPlace(1, 1), "The text is not UTF-8.", "Save it as UTF-8.");
        }
    }

    private static ProfileDocument Parse(string path, string text)
    {
        try
        {
            var places = JsonScan.Run(Encoding.UTF8.GetBytes(text));
            using var reader = new JsonTextReader(new StringReader(text)) { DateParseHandling = DateParseHandling.None };
            var root = JToken.ReadFrom(reader);
            var next = 0;
            Annotate(root, places, ref next);
            return new ProfileDocument(path, root);
        }
        catch (JsonScanException error)
        {
            throw Refuse(path, error.JsonPath, error.Place, error.Message, error.Remedy);
        }
    }

    private static void Annotate(JToken token, IReadOnlyList<TextPlace> places, ref int next)
    {
        token.AddAnnotation(places[next++]);
        foreach (var child in token.Children()) Annotate(child, places, ref next);
    }

    private static ProfileException Refuse(string path, string jsonPath, TextPlace place, string problem, string remedy) =>
        new([CreateFinding(path, Severity.Error, jsonPath, place, problem, remedy)]);
}
