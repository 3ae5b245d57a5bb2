using System.Text.Json;

namespace LayerTools.Json;

/// <summary>
/// Reads a JSON text once, strictly (RFC 8259), and finds where each property and each value begins, in the order of the text. Refuses what the steps behind it
/// could not hold: deep nesting, very many values, very long names, numbers beyond any use, two properties of one name, halves of surrogate pairs.
/// </summary>
internal sealed class JsonScan
{
    /// <summary>Deepest nesting; a profile has six levels, a ledger three.</summary>
    private const int Deepest = 16;

    private const int LongestName = 200;
    private const double LargestNumber = 1e15;

    private readonly JsonFormat format;
    private readonly byte[] text;
    private readonly List<TextPlace> places = [];
    private readonly List<string> path = [JsonPath.Root];
    private int scanned;
    private int line = 1;
    private int column = 1;

    private JsonScan(JsonFormat format, byte[] text) => (this.format, this.text) = (format, text);

    /// <param name="format">The kind of file.</param>
    /// <param name="text">UTF-8 without a byte order mark.</param>
    /// <exception cref="JsonFaultException">The text is no JSON, or none that can be held.</exception>
    public static IReadOnlyList<TextPlace> Run(JsonFormat format, byte[] text)
    {
        var scan = new JsonScan(format, text);
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = Deepest });
        try
        {
            reader.Read();
            scan.Value(ref reader);
            reader.Read();
            return scan.places;
        }
        catch (JsonException error)
        {
            var place = scan.PlaceOf(Math.Max(error.LineNumber ?? 0, 0), Math.Max(error.BytePositionInLine ?? 0, 0));
            throw scan.Refuse(place, $"The text is not JSON as it can be read here: {WithoutPlace(error.Message)}", "Correct the text at this place.");
        }
    }

    private void Value(ref Utf8JsonReader reader)
    {
        var place = Note(ref reader);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                Properties(ref reader);
                break;
            case JsonTokenType.StartArray:
                Items(ref reader);
                break;
            case JsonTokenType.String:
                Text(ref reader, place);
                break;
            case JsonTokenType.Number when !reader.TryGetDouble(out var number) || !(Math.Abs(number) <= LargestNumber):
                throw Refuse(place, "The number is larger than any that has a use here.", "Correct the number.");
        }
    }

    private void Properties(ref Utf8JsonReader reader)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var place = Note(ref reader);
            var name = Text(ref reader, place);
            if (name.Length > LongestName) throw Refuse(place, FormattableString.Invariant($"A property's name has {name.Length} characters; the limit is {LongestName}."), "Shorten it.");
            path.Add(JsonPath.Property(string.Empty, name));
            if (!names.Add(name)) throw Refuse(place, $"'{name}' is there twice.", "Leave one of them out.");
            reader.Read();
            Value(ref reader);
            path.RemoveAt(path.Count - 1);
        }
    }

    private void Items(ref Utf8JsonReader reader)
    {
        for (var i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
        {
            path.Add(JsonPath.Item(string.Empty, i));
            Value(ref reader);
            path.RemoveAt(path.Count - 1);
        }
    }

    private string Text(ref Utf8JsonReader reader, TextPlace place)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            throw Refuse(place, "The text holds half of a surrogate pair, which is no character.", "Write the whole character.");
        }
    }

    private TextPlace Note(ref Utf8JsonReader reader)
    {
        Advance((int)reader.TokenStartIndex);
        var place = new TextPlace(line, column);
        if (places.Count == format.MostItems) throw Refuse(place, FormattableString.Invariant($"There are more than {format.MostItems} values."), $"Name a *{format.Extension} file.");
        places.Add(place);
        return place;
    }

    private TextPlace PlaceOf(long lineIndex, long byteInLine)
    {
        while (line <= lineIndex && scanned < text.Length) Advance(scanned + 1);
        Advance((int)Math.Min(text.Length, scanned + byteInLine - (column - 1)));
        return new TextPlace(line, column);
    }

    private void Advance(int end)
    {
        for (; scanned < end; scanned++)
        {
            switch (text[scanned])
            {
                case (byte)'\n':
                    (line, column) = (line + 1, 1);
                    break;
                case >= 0xF0:
                    column += 2;
                    break;
                case < 0x80 or >= 0xC0:
                    column++;
                    break;
            }
        }
    }

    private JsonFaultException Refuse(TextPlace place, string problem, string remedy) => new(new JsonFault(string.Concat(path), place, problem, remedy));

    /// <summary>The library says the place too, counted from 0.</summary>
    private static string WithoutPlace(string message)
    {
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        // What the library tells its programmers says nothing to whoever wrote the profile.
        return (end < 0 ? message : message.Substring(0, end)).Replace(" Change the reader options.", string.Empty).Replace(" which is not supported in this mode", string.Empty);
    }
}
