namespace LayerTools.Model;

/// <summary>What a file format keeps with a file beyond the model, in the format's own form.</summary>
internal abstract class FileDetail
{
    /// <summary>A new, plain layer's detail.</summary>
    public abstract LayerDetail CreateLayerDetail(LayerKind kind);
}
