using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using LayerTools.Model;

namespace LayerTools.Images;

/// <summary>Says where each picture belongs, so that the figure can be put together again.</summary>
internal sealed record ImageManifest
{
    public const string JsonName = "layers.json";

    public const string CsvName = "layers.csv";

    public const string SchemaName = "layers.schema.json";

    private static readonly JsonSerializerOptions Json = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        // The text is read as a file, never as part of a web page, so names stay legible.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    [JsonPropertyName("$schema")]
    public string Schema { get; } = SchemaName;

    /// <summary>Counts up when a reader of the old form could not read the new one.</summary>
    public int Version { get; } = 1;

    /// <summary>Name of the layered file.</summary>
    public required string File { get; init; }

    /// <summary>Canvas columns, px.</summary>
    public required int Width { get; init; }

    /// <summary>Canvas rows, px.</summary>
    public required int Height { get; init; }

    /// <summary>Pixels per inch, or null.</summary>
    public required double? Ppi { get; init; }

    /// <summary>Whether pictures are as large as the canvas.</summary>
    public required bool CanvasSized { get; init; }

    /// <summary>Whether the layers' masks are in their pictures.</summary>
    public required bool Masked { get; init; }

    /// <summary>Front to back, each group right before its layers.</summary>
    public required IReadOnlyList<ImageEntry> Layers { get; init; }

    public static ImageManifest Create(LayerFile file, ImageOptions options, IReadOnlyList<ImageEntry> layers) => new()
    {
        File = WellFormed.Of(file.Name),
        Width = file.Width,
        Height = file.Height,
        Ppi = file.Ppi,
        CanvasSized = options.Canvas,
        Masked = !options.NoMask,
        Layers = layers,
    };

    /// <summary>The schema that <see cref="ToJson"/> follows, as it is shipped.</summary>
    public static byte[] ReadSchema()
    {
        using var stream = typeof(ImageManifest).Assembly.GetManifestResourceStream(SchemaName)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    public byte[] ToJson() => JsonSerializer.SerializeToUtf8Bytes(this, Json);

    /// <summary>The layers as a table (RFC 4180) in UTF-8, with a byte order mark by which spreadsheets know it.</summary>
    public byte[] ToCsv()
    {
        var text = new StringBuilder();
        AddRow(text, ["Order", "Path", "Group", "Kind", "Image", "Left", "Top", "Width", "Height", "Opacity", "FillOpacity", "BlendMode", "Clipped", "Visible", "Shown", "Missing"]);
        foreach (var layer in Layers)
        {
            AddRow(text, [layer.Order, layer.Path, layer.Group, layer.Kind, layer.Image, layer.Left, layer.Top, layer.Width, layer.Height, layer.Opacity, layer.FillOpacity,
                layer.BlendMode, layer.Clipped, layer.Visible, layer.Shown, string.Join("; ", layer.Missing)]);
        }

        return [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    private static void AddRow(StringBuilder text, IEnumerable<object?> values) =>
        text.Append(string.Join(",", values.Select(value => Quote(Convert.ToString(value, CultureInfo.InvariantCulture) ?? string.Empty)))).Append("\r\n");

    private static string Quote(string value) => value.IndexOfAny([',', '"', '\r', '\n']) < 0 && value.Trim().Length == value.Length ? value : $"\"{value.Replace("\"", "\"\"")}\"";
}
