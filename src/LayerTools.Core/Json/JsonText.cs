using System.Globalization;
using System.Text;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace LayerTools.Json;

/// <summary>Writes JSON so that it reads and diffs well: indented by two, one value a line, LF, UTF-8 without a byte order mark.</summary>
internal static class JsonText
{
    public static byte[] Write(JToken json)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (var writer = new JsonTextWriter(text) { Formatting = Formatting.Indented, Indentation = 2, CloseOutput = false })
        {
            json.WriteTo(writer);
        }

        text.WriteLine();
        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
