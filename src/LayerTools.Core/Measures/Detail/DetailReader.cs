using LayerTools.Errors;
using LayerTools.Measures.Budget;
using LayerTools.Measures.Survey;
using LayerTools.Model;
using LayerTools.Names;
using LayerTools.Pixels;
using LayerTools.Profiles;

namespace LayerTools.Measures.Detail;

/// <summary>Tells how much detail a figure has on the screens that it is shown on.</summary>
/// <param name="profile">The words for parts.</param>
/// <param name="screens">The screens.</param>
public sealed class DetailReader(LayerProfile profile, IReadOnlyList<ScreenSize> screens)
{
    private readonly NameReader names = new(profile.Naming);

    /// <summary>The whole figure, the bust and the face on each screen.</summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="framings">Which of them, in this order.</param>
    /// <param name="warn">Told, as a sentence, which was not found.</param>
    /// <param name="cancellation">Stops.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public IReadOnlyList<FramingDetail> Read(LayerFile file, IEnumerable<FramingKind> framings, Action<string> warn, CancellationToken cancellation = default)
    {
        var survey = FigureSurvey.Take(file, cancellation);
        var found = new FigureFramings(survey, layer => names.Read(layer.Name));
        var details = new List<FramingDetail>();
        foreach (var kind in framings)
        {
            if (found.Find(kind) is { } box) details.AddRange(screens.Select(screen => Describe(file, survey, kind, null, new ScreenFit(box, screen))));
            else warn(DescribeMissing(kind));
        }

        return details;
    }

    /// <summary>Chosen layers, a group as what is in it, on each screen. Layers without painted pixels are left out.</summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="layers">The layers.</param>
    /// <param name="cancellation">Stops.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, or the file changed on disk.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public IReadOnlyList<FramingDetail> Read(LayerFile file, IReadOnlyCollection<Layer> layers, CancellationToken cancellation = default)
    {
        var survey = FigureSurvey.Take(file, cancellation);
        return
        [
            .. from layer in Selection.InStackOrder(file, layers)
               let box = FigureFramings.FindPart(survey, layer)
               where box is not null
               from screen in screens
               select Describe(file, survey, FramingKind.Part, layer, new ScreenFit(box.Value, screen)),
        ];
    }

    /// <summary>Whether parts were enlarged after they were drawn: each part of the figure among the chosen layers, front to back.</summary>
    /// <param name="file">The file. Pending edits are seen.</param>
    /// <param name="layers">The layers, a group standing for what is in it; null for all.</param>
    /// <param name="cancellation">Stops.</param>
    /// <exception cref="LayeredFileException">A channel is damaged, a layer is too large, or the file changed on disk.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IEnumerable<PartEnlargement> FindEnlarged(LayerFile file, IReadOnlyCollection<Layer>? layers, CancellationToken cancellation = default)
    {
        var roles = new StatusOptions();
        using var reader = new PixelReader(file);
        foreach (var layer in Selection.InStackOrder(file, (layers ?? file.GetChildren()).SelectMany(layer => new[] { layer }.Concat(layer.GetLayers()))))
        {
            cancellation.ThrowIfCancellationRequested();
            if (layer.Kind is LayerKind.Group or LayerKind.Adjustment or LayerKind.Fill || layer.Bounds.IsEmpty || roles.FindRole(layer) != LayerRole.Part) continue;
            var estimate = EnlargementFinder.Estimate(reader.ReadRaster(layer), cancellation);
            yield return new PartEnlargement
            {
                FilePath = file.Path,
                LayerPath = layer.LayerPath,
                LayerNumber = layer.LayerNumber,
                Name = layer.Name,
                Factor = estimate.Factor,
                Certainty = estimate.Certainty,
                DetailPercent = estimate.DetailPercent,
                Reason = estimate.Reason,
            };
        }
    }

    private string DescribeMissing(FramingKind kind) => kind == FramingKind.Figure
        ? "Nothing is painted on parts that are switched on."
        : FormattableString.Invariant($"No {kind.ToString().ToLowerInvariant()} was found, since no name of a part that is switched on says face, head, eye, nose or mouth in the words of the profile '{profile.Name}'.");

    private static FramingDetail Describe(LayerFile file, FigureSurvey survey, FramingKind kind, Layer? layer, ScreenFit fit)
    {
        var (width, height) = fit.FindCanvas(file.Width, file.Height);
        var textures = TextureMemory.InMegabytes(TexturePages.FindParts(survey, null).Sum(part => part.Painted.Area));
        return new FramingDetail
        {
            FilePath = file.Path,
            Framing = kind,
            LayerPath = layer?.LayerPath,
            LayerNumber = layer?.LayerNumber,
            Screen = fit.Screen.Name,
            ScreenWidth = fit.Screen.Width,
            ScreenHeight = fit.Screen.Height,
            Left = fit.Box.Left,
            Top = fit.Box.Top,
            Width = fit.Box.Width,
            Height = fit.Box.Height,
            FitBy = fit.Side,
            Ratio = fit.Ratio,
            ShowsPixels = fit.Ratio > 1,
            ClosestZoom = 1 / fit.Ratio,
            ClosestWidth = fit.Screen.Width,
            ClosestHeight = fit.Screen.Height,
            NeededCanvasWidth = width,
            NeededCanvasHeight = height,
            CanvasMB = TextureMemory.InMegabytes((long)file.Width * file.Height),
            NeededCanvasMB = TextureMemory.InMegabytes(width * height),
            TexturesMB = textures,
            NeededTexturesMB = textures * fit.Ratio * fit.Ratio,
        };
    }
}
