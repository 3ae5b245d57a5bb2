using LayerTools.Model;

namespace LayerTools.Formats.Psd;

/// <summary>Compares a model with the file that was written from it, and lets the model stand for that file.</summary>
internal static class PsdRebinding
{
    /// <summary>The first thing that the written file says otherwise; null if it says the same.</summary>
    public static string? FindDifference(LayerFile file, LayerFile written)
    {
        if ((file.Width, file.Height) != (written.Width, written.Height)) return "canvas size";
        if (!file.Guides.Select(Round).SequenceEqual(written.Guides.Select(Round)) || Math.Abs((file.Ppi ?? 0) - (written.Ppi ?? 0)) > 0.001) return "guides or resolution";
        if ((file.ColorMode, file.BitDepth) != (written.ColorMode, written.BitDepth)) return "colour mode or depth";
        if (file.LayerCount != written.LayerCount) return $"{written.LayerCount} layers instead of {file.LayerCount}";
        return file.GetLayers().Zip(written.GetLayers(), FindDifference).FirstOrDefault(difference => difference is not null);
    }

    /// <summary>Makes the model's layers point into the written file, so that it can be edited and saved again.</summary>
    public static void Rebind(LayerFile file, LayerFile written)
    {
        foreach (var (layer, stored) in file.GetLayers().Zip(written.GetLayers(), (layer, stored) => (layer, stored)).ToList())
        {
            layer.Planes = stored.Planes;
            layer.Detail = stored.Detail;
        }

        file.Source = written.Source;
        file.Detail = written.Detail;
    }

    private static string? FindDifference(Layer layer, Layer written)
    {
        var place = layer.LayerPath;
        if (layer.Name != written.Name) return $"the name of '{place}'";
        if (layer.Depth != written.Depth || layer.Kind != written.Kind) return $"the place or kind of '{place}'";
        if (layer.Bounds != written.Bounds) return $"the rectangle of '{place}'";
        if (layer.Id != written.Id || layer.Mark != written.Mark || layer.Visible != written.Visible || layer.Clipped != written.Clipped) return $"the properties of '{place}'";
        if (layer.OpacityByte != written.OpacityByte || layer.FillOpacity != written.FillOpacity || layer.BlendMode != written.BlendMode) return $"the opacity or blend mode of '{place}'";
        if (layer.LockFlags != written.LockFlags || layer.Mask != written.Mask) return $"the locks or the mask of '{place}'";
        if (layer.Planes.Count > 0 && !layer.Planes.Select(plane => (plane.Role, plane.StoredLength)).SequenceEqual(written.Planes.Select(plane => (plane.Role, plane.StoredLength)))) return $"the channels of '{place}'";
        return null;
    }

    /// <summary>Files store guides in steps of 1/32 px.</summary>
    private static (double, bool) Round(Guide guide) => (Math.Round(guide.Position * 32), guide.IsVertical);
}
