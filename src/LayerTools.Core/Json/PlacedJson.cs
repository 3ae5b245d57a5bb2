using System.Text;
using LayerTools.Errors;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace LayerTools.Json;

/// <summary>A JSON text whose values know their places.</summary>
internal sealed class PlacedJson
{
    private PlacedJson(JToken root) => Root = root;

    public JToken Root { get; }

    /// <exception cref="JsonFaultException">The text is no JSON, or none that can be held.</exception>
    /// <exception cref="LayeredFileException">The file cannot be opened, or is too large.</exception>
    public static PlacedJson Read(JsonFormat format, string path) => FileAccessErrors.Wrap(path, () =>
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return Read(format, path, stream);
    });

    /// <inheritdoc cref="Read(JsonFormat, string)"/>
    public static PlacedJson Read(JsonFormat format, string path, Stream stream)
    {
        using var bytes = new MemoryStream();
        var piece = new byte[1 << 16];
        while (bytes.Length <= format.LargestFile && stream.Read(piece, 0, piece.Length) is > 0 and var read) bytes.Write(piece, 0, read);
        if (bytes.Length > format.LargestFile)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, path, format.Noun, -1,
                FormattableString.Invariant($"A {format.Noun} has at most {format.LargestFile} bytes, and this file has more."), $"Name a *{format.Extension} file.");
        }

        bytes.Position = 0;
        return Parse(format, Decode(bytes));
    }

    /// <summary>Something that is wrong with a value.</summary>
    public static JsonFault Find(JToken token, string problem, string remedy) => new(JsonPath.Of(token), token.Annotation<TextPlace>()!, problem, remedy);

    private static string Decode(Stream bytes)
    {
        try
        {
            using var reader = new StreamReader(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true), detectEncodingFromByteOrderMarks: true);
            return reader.ReadToEnd();
        }
        catch (DecoderFallbackException)
        {
            throw new JsonFaultException(new JsonFault(JsonPath.Root, new TextPlace(1, 1), "The text is not UTF-8.", "Save it as UTF-8."));
        }
    }

    private static PlacedJson Parse(JsonFormat format, string text)
    {
        var places = JsonScan.Run(format, Encoding.UTF8.GetBytes(text));
        using var reader = new JsonTextReader(new StringReader(text)) { DateParseHandling = DateParseHandling.None };
        var root = JToken.ReadFrom(reader);
        var next = 0;
        Annotate(root, places, ref next);
        return new PlacedJson(root);
    }

    private static void Annotate(JToken token, IReadOnlyList<TextPlace> places, ref int next)
    {
        token.AddAnnotation(places[next++]);
        foreach (var child in token.Children()) Annotate(child, places, ref next);
    }
}
