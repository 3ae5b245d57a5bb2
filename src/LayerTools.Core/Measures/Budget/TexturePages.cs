using LayerTools.Errors;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Profiles;

namespace LayerTools.Measures.Budget;

/// <summary>
/// The parts of a file on square pages. The box of a part holds all its pixels with alpha above 0; boxes keep the padding to each other and to the edges of
/// the page. Packed by <see cref="BoxPacker"/>.
/// </summary>
public sealed class TexturePages
{
    private const int LargestSize = 16384;

    private readonly LayerFile file;
    private readonly TextureProfile textures;
    private readonly IReadOnlyList<PartSurvey> parts;
    private readonly PackOutcome outcome;
    private readonly CancellationToken cancellation;

    private TexturePages(LayerFile file, TextureProfile textures, IReadOnlyList<PartSurvey> parts, int enough, CancellationToken cancellation)
    {
        this.file = file;
        this.textures = textures;
        this.parts = parts;
        this.cancellation = cancellation;
        if (FindTooLarge(textures, parts) is { Count: > 0 } large) throw Refuse(file, textures, large);
        outcome = Pack(1, enough);
    }

    /// <summary>Pages.</summary>
    public int Count => outcome.PageCount;

    /// <summary>Packs the parts of a file; sketches, guides and backdrops are none.</summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="layers">The layers to pack, a group standing for what is in it; null for all.</param>
    /// <param name="textures">Size of the pages, padding, and whether parts may be turned.</param>
    /// <param name="cancellation">Stops.</param>
    /// <exception cref="LayeredFileException">A part is larger than a page, or a channel is damaged.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static TexturePages Pack(LayerFile file, IReadOnlyCollection<Layer>? layers, TextureProfile textures, CancellationToken cancellation = default)
    {
        var survey = FigureSurvey.Take(file, cancellation);
        var chosen = layers is null ? null : new HashSet<Layer>(layers.SelectMany(layer => new[] { layer }.Concat(layer.GetLayers())));
        return new TexturePages(file, textures, FindParts(survey, chosen), 0, cancellation);
    }

    /// <summary>What all pages need.</summary>
    public TextureBudget Sum()
    {
        var area = parts.Sum(part => part.Painted.Area);
        var largest = ByCost() is [var first, ..] ? first : null;
        var (at75, at50) = (Pack(0.75, 0).PageCount, Pack(0.5, 0).PageCount);
        return new TextureBudget
        {
            FilePath = file.Path,
            PageSize = textures.PageSize,
            Padding = textures.Padding,
            Turn = textures.Turn,
            Parts = parts.Count,
            Pages = Count,
            FewestPages = outcome.FewestPages,
            FillPercent = Percent(area, Count * PageArea),
            MemoryMB = TextureMemory.InMegabytes(Count * PageArea),
            MipmapMemoryMB = TextureMemory.InMegabytes(Count * TextureMemory.CountWithMipmaps(textures.PageSize)),
            PartsMB = TextureMemory.InMegabytes(area),
            PagesAt75 = at75,
            SavedMBAt75 = TextureMemory.InMegabytes((Count - at75) * PageArea),
            PagesAt50 = at50,
            SavedMBAt50 = TextureMemory.InMegabytes((Count - at50) * PageArea),
            LargestPart = largest?.LayerPath,
            LargestPartPercent = largest?.SharePercent ?? 0,
        };
    }

    /// <summary>Each page.</summary>
    public IReadOnlyList<TexturePage> List() =>
    [
        .. Enumerable.Range(0, Count).Select(page =>
        {
            var onPage = parts.Where((_, i) => outcome.Places[i].Page == page).ToList();
            return new TexturePage
            {
                FilePath = file.Path,
                Page = page + 1,
                PageSize = textures.PageSize,
                Parts = onPage.Count,
                FillPercent = Percent(onPage.Sum(part => part.Painted.Area), PageArea),
                PaintedPercent = Percent(onPage.Sum(part => part.PaintedArea), PageArea),
            };
        }),
    ];

    /// <summary>Each part, the most costly first; of equal ones the one in front.</summary>
    public IReadOnlyList<TexturePart> ByCost()
    {
        var area = parts.Sum(part => part.Painted.Area);
        return [.. parts.Select((part, i) => Describe(part, outcome.Places[i], area)).OrderByDescending(part => part.MemoryMB)];
    }

    /// <summary>Packs parts that are known already.</summary>
    /// <param name="file">The file.</param>
    /// <param name="survey">Its parts.</param>
    /// <param name="textures">Size of the pages, padding, and whether parts may be turned.</param>
    /// <param name="enough">A number of pages that is good enough to look no further.</param>
    /// <param name="cancellation">Stops.</param>
    internal static TexturePages Pack(LayerFile file, FigureSurvey survey, TextureProfile textures, int enough, CancellationToken cancellation) =>
        new(file, textures, FindParts(survey, null), enough, cancellation);

    /// <summary>The parts that no page of the size holds, front to back.</summary>
    internal static IReadOnlyList<PartSurvey> FindTooLarge(TextureProfile textures, IReadOnlyList<PartSurvey> parts)
    {
        var packer = CreatePacker(textures);
        return [.. parts.Where(part => !packer.Fits(Padded(part, textures, 1)))];
    }

    /// <summary>The parts of the figure that have pixels, front to back.</summary>
    internal static IReadOnlyList<PartSurvey> FindParts(FigureSurvey survey, ISet<Layer>? chosen) =>
        [.. survey.Parts.Where(part => part.Role == LayerRole.Part && !part.Painted.IsEmpty && chosen?.Contains(part.Layer) != false)];

    /// <summary>What makes a part fit that is larger than a page, as an option of the cmdlet; null if nothing does.</summary>
    internal static string? FindRemedy(TextureProfile textures, IReadOnlyCollection<PartSurvey> large)
    {
        for (var size = textures.PageSize * 2; size <= LargestSize; size *= 2)
        {
            if (FindTooLarge(textures with { PageSize = size }, [.. large]).Count == 0) return FormattableString.Invariant($"-PageSize {size}");
        }

        return null;
    }

    /// <summary>The places of the parts on a page.</summary>
    internal IEnumerable<(PartSurvey Part, PackPlace Place)> OnPage(int page) =>
        parts.Select((part, i) => (part, outcome.Places[i])).Where(item => item.Item2.Page == page).Select(item => (item.part, item.Item2 with
        {
            Left = item.Item2.Left + textures.Padding,
            Top = item.Item2.Top + textures.Padding,
        }));

    internal LayerFile File => file;

    internal TextureProfile Textures => textures;

    private long PageArea => (long)textures.PageSize * textures.PageSize;

    /// <summary>Each box takes its padding at the right and below along; the page's own at the left and on top is left out.</summary>
    private static BoxPacker CreatePacker(TextureProfile textures) => new(textures.PageSize - textures.Padding, textures.PageSize - textures.Padding, textures.Turn);

    private static PackSize Padded(PartSurvey part, TextureProfile textures, double scale) =>
        new((int)Math.Ceiling(part.Painted.Width * scale) + textures.Padding, (int)Math.Ceiling(part.Painted.Height * scale) + textures.Padding);

    private static double Percent(long part, long whole) => whole == 0 ? 0 : 100.0 * part / whole;

    private static LayeredFileException Refuse(LayerFile file, TextureProfile textures, IReadOnlyList<PartSurvey> large)
    {
        var first = large[0];
        var more = large.Count > 1 ? FormattableString.Invariant($", and so are {large.Count - 1} more") : string.Empty;
        var most = textures.PageSize - (2 * textures.Padding);
        var remedy = FindRemedy(textures, large) is { } option ? $"Use {option}, or make the part smaller." : "Cut the part in pieces, or make it smaller.";
        return new LayeredFileException(LayeredFileErrorKind.LimitExceeded, file.Path, $"layer '{first.Layer.LayerPath}'", -1,
            FormattableString.Invariant($"It is painted on {first.Painted.Width} x {first.Painted.Height} px, and a page of {textures.PageSize} px holds {most} x {most}{more}."), remedy);
    }

    private PackOutcome Pack(double scale, int enough) =>
        CreatePacker(textures).Pack([.. parts.Select(part => Padded(part, textures, scale))], enough, cancellation);

    private TexturePart Describe(PartSurvey part, PackPlace place, long area) => new()
    {
        FilePath = file.Path,
        LayerPath = part.Layer.LayerPath,
        LayerNumber = part.Layer.LayerNumber,
        Name = part.Layer.Name,
        Page = place.Page + 1,
        Left = place.Left + textures.Padding,
        Top = place.Top + textures.Padding,
        Width = part.Painted.Width,
        Height = part.Painted.Height,
        Turned = place.Turned,
        MemoryMB = TextureMemory.InMegabytes(part.Painted.Area),
        SharePercent = Percent(part.Painted.Area, area),
        PaintedPercent = Percent(part.PaintedArea, part.Painted.Area),
    };
}
