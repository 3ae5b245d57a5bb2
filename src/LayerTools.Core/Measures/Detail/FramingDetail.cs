namespace LayerTools.Measures.Detail;

/// <summary>How much detail a framing has on a screen that it fills without margin. 1 MB is 2^20 bytes; a pixel takes 4 bytes (red, green, blue, alpha).</summary>
public sealed record FramingDetail
{
    /// <summary>The file.</summary>
    public required string FilePath { get; init; }

    /// <summary>What the camera looks at.</summary>
    public required FramingKind Framing { get; init; }

    /// <summary>The layer's path; null for the figure, the bust and the face.</summary>
    public string? LayerPath { get; init; }

    /// <summary>The layer's number, 1 = front-most; null likewise.</summary>
    public int? LayerNumber { get; init; }

    /// <summary>What the screen is called.</summary>
    public required string Screen { get; init; }

    /// <summary>Columns of the screen, px.</summary>
    public required int ScreenWidth { get; init; }

    /// <summary>Rows of the screen, px.</summary>
    public required int ScreenHeight { get; init; }

    /// <summary>First column of the framing, canvas px.</summary>
    public required int Left { get; init; }

    /// <summary>First row of the framing, canvas px.</summary>
    public required int Top { get; init; }

    /// <summary>Columns of the framing, canvas px.</summary>
    public required int Width { get; init; }

    /// <summary>Rows of the framing, canvas px.</summary>
    public required int Height { get; init; }

    /// <summary>The side of the screen that the framing fills from edge to edge.</summary>
    public required ScreenSide FitBy { get; init; }

    /// <summary>Screen pixels per canvas pixel: the smaller of screen width / width and screen height / height. Above 1 the screen shows pixels.</summary>
    public required double Ratio { get; init; }

    /// <summary>Whether the ratio is above 1.</summary>
    public required bool ShowsPixels { get; init; }

    /// <summary>How many times closer the camera can go until the ratio is 1: 1 / ratio. Below 1 it is too close already.</summary>
    public required double ClosestZoom { get; init; }

    /// <summary>Columns that the screen shows at a ratio of 1, canvas px; as many as the screen has.</summary>
    public required int ClosestWidth { get; init; }

    /// <summary>Rows that the screen shows at a ratio of 1, canvas px.</summary>
    public required int ClosestHeight { get; init; }

    /// <summary>Columns of a canvas on which this framing has a ratio of 1, px: canvas × ratio, rounded up to an even number.</summary>
    public required long NeededCanvasWidth { get; init; }

    /// <summary>Rows of that canvas, px.</summary>
    public required long NeededCanvasHeight { get; init; }

    /// <summary>What one picture of the canvas takes in memory as it is, MB.</summary>
    public required double CanvasMB { get; init; }

    /// <summary>What one picture of the needed canvas takes, MB: it goes with the square of the ratio.</summary>
    public required double NeededCanvasMB { get; init; }

    /// <summary>What the painted boxes of all parts take as textures, MB, without gaps.</summary>
    public required double TexturesMB { get; init; }

    /// <summary>The same on the needed canvas: × ratio².</summary>
    public required double NeededTexturesMB { get; init; }
}
