using System.Text;
using LayerTools.Errors;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace LayerTools.Profiles;

/// <summary>Turns the bytes of a profile into JSON values that know their place.</summary>
internal static class ProfileJson
{
    /// <summary>Most bytes of a profile; a full one with a vocabulary of its own has some 50,000.</summary>
    public const int LargestFile = 1 << 20;

    /// <summary>Deepest nesting; a profile has six levels.</summary>
    private const int Deepest = 16;

    /// <exception cref="LayeredFileException">The file cannot be read or is too large.</exception>
    public static byte[] ReadBytes(string path) => FileAccessErrors.Wrap(path, () =>
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        if (stream.Length > LargestFile)
        {
            throw new LayeredFileException(LayeredFileErrorKind.LimitExceeded, path, "profile", -1,
                FormattableString.Invariant($"A profile has at most {LargestFile} bytes; this file has {stream.Length}."), "Name a *.layerprofile.json file.");
        }

        using var bytes = new MemoryStream((int)stream.Length);
        stream.CopyTo(bytes);
        return bytes.ToArray();
    });

    /// <exception cref="LayeredFileException">The text is no JSON.</exception>
    public static JObject Parse(byte[] bytes, string path)
    {
        try
        {
            using var reader = new JsonTextReader(new StreamReader(new MemoryStream(bytes), Encoding.UTF8)) { MaxDepth = Deepest, DateParseHandling = DateParseHandling.None };
            return JObject.Load(reader, new JsonLoadSettings { DuplicatePropertyNameHandling = DuplicatePropertyNameHandling.Error });
        }
        catch (JsonException error)
        {
            throw new LayeredFileException(LayeredFileErrorKind.Damaged, path, "profile", -1, $"This is no JSON: {error.Message}", "Correct the text.", error);
        }
    }
}
