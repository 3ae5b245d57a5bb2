using LayerTools.Ledgers;
using LayerTools.Measures;
using LayerTools.Model;
using LayerTools.Pixels;
using LayerTools.Profiles;
using LayerTools.Tests.Support;
using Xunit;

namespace LayerTools.Tests.Ledgers;

/// <summary>An invented figure, what happens to it on the way through other programs, and its ledgers.</summary>
internal static class LedgerFigure
{
    public static readonly DateTime Monday = new(2026, 3, 2, 9, 30, 0, DateTimeKind.Utc);

    public static readonly LedgerRules Rules = new(LayerProfiles.Default.Marks, new StatusOptions());

    /// <summary>Four parts in two groups, each unlike the others, and a backdrop.</summary>
    public static LayerFile Create() => ModelBuilder.File("/figures/hero.psd", 200, 200,
        ModelBuilder.Group("Head", Eye("Eye L", 60), Painting.Of("Face").Ellipse(40, 20, 80, 90, rgb: 0xE0C0A0).Rectangle(60, 80, 40, 6, rgb: 0x803030).ToLayer()),
        ModelBuilder.Group("Body", Painting.Of("Arm L").Rectangle(20, 100, 20, 70, rgb: 0x406080).Ellipse(20, 150, 20, 30, rgb: 0xE0C0A0).Rectangle(20, 120, 10, 8, rgb: 0xF0F000).ToLayer(),
            Painting.Of("Coat").Rectangle(40, 100, 80, 90, rgb: 0x203040).Ellipse(70, 110, 12, 12, rgb: 0xF0E000).Ellipse(70, 150, 12, 12, rgb: 0xF0E000).ToLayer()),
        Painting.Of("Backdrop").Rectangle(0, 0, 200, 200, rgb: 0x808080).ToLayer());

    public static Layer Eye(string name, int left) => Painting.Of(name).Ellipse(left, 50, 18, 12, rgb: 0xFFFFFF).Ellipse(left + 6, 52, 8, 8, rgb: 0x102030).Rectangle(left, 50, 5, 3, alpha: 90).ToLayer();

    public static Layer Part(this LayerFile file, string name) => file.GetLayers().Single(layer => layer.Name == name);

    public static LedgerJoin Join(LayerFile file, params LayerLedger[] ledgers) => Use(file, parts => new LedgerJoin(parts, ledgers, Rules));

    public static LedgerRow Row(this LedgerJoin join, string name) => join.Rows.Single(row => row.Layer!.Name == name);

    public static LayerLedger Update(LayerFile file, LedgerUpdate update, params LayerLedger[] ledgers) => Use(file, parts => update.Create(parts, new LedgerJoin(parts, ledgers, Rules), Rules));

    public static LayerLedger Export(LayerFile file, params LayerLedger[] ledgers) => Update(file, new LedgerUpdate { Now = Monday, Who = "anna" }, ledgers);

    public static IReadOnlyDictionary<Layer, Mark> FindMarks(LayerFile file, params LayerLedger[] ledgers) => Use(file, parts => LedgerMarks.Find(parts, new LedgerJoin(parts, ledgers, Rules), Rules));

    public static LedgerStatus[] Read(LayerFile file, params LayerLedger[] ledgers) => [.. new LedgerStatusReader(Rules).Read(file, null, ledgers, TestContext.Current.CancellationToken).Statuses.Cast<LedgerStatus>()];

    /// <summary>What a program does that drops colours, gives ids anew, and packs channels its own way.</summary>
    public static void LoseMarks(LayerFile file, Compression compression = Compression.ZipPrediction)
    {
        using var reader = new PixelReader(file);
        var id = 500;
        foreach (var layer in file.GetLayers())
        {
            (layer.Mark, layer.Id) = (Mark.None, id += 3);
            for (var i = 0; i < layer.Planes.Count; i++)
            {
                var role = layer.Planes[i].Role;
                layer.Planes[i] = PlanePacker.Pack(role, compression, layer.Bounds.Width, layer.Bounds.Height, 8, file.Format, reader.ReadPlane(layer, role), file.Spool);
            }
        }
    }

    /// <summary>Paints over a part.</summary>
    public static void Repaint(Layer layer) => layer.Planes[^1] = ModelBuilder.Raw(layer.Planes[^1].Role, [.. Enumerable.Range(0, layer.Bounds.Width * layer.Bounds.Height).Select(i => (byte)(i * 13))]);

    private static T Use<T>(LayerFile file, Func<LedgerParts, T> use)
    {
        using var parts = new LedgerParts(file, Rules.Options, TestContext.Current.CancellationToken);
        return use(parts);
    }
}
