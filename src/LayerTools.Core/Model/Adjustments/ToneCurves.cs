namespace LayerTools.Model.Adjustments;

/// <summary>Tones along drawn curves.</summary>
internal sealed record ToneCurves(IReadOnlyList<ToneCurve> Curves) : Adjustment("tone curves");
