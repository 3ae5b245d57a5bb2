using System.Globalization;
using LayerTools.Model;

namespace LayerTools.Edits;

/// <summary>Sets layers' mark, visibility and opacity. What is null stays as it is.</summary>
public sealed class SetLayerEdit : LayerEdit
{
    private readonly byte? opacity;

    /// <summary>The mark; <see cref="Model.Mark.None"/> takes marks away.</summary>
    public Mark? Mark { get; init; }

    /// <summary>Whether the layers themselves are switched on.</summary>
    public bool? Visible { get; init; }

    /// <summary>Opacity, 0 to 100 %; files keep steps of 1/255.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not from 0 to 100.</exception>
    public double? Opacity
    {
        get => opacity * 100.0 / 255;
        init
        {
            if (value is { } percent && !(percent >= 0 && percent <= 100)) throw new ArgumentOutOfRangeException(nameof(value), percent, "Opacity is 0 to 100 %.");
            opacity = value is null ? null : (byte)Math.Round(value.Value * 255 / 100, MidpointRounding.AwayFromZero);
        }
    }

    /// <inheritdoc/>
    public override EditPlan Plan(LayerFile file, IReadOnlyList<Layer> layers)
    {
        var steps = new List<EditStep>();
        var changesPicture = false;
        foreach (var layer in Selection.InStackOrder(file, layers))
        {
            if (Mark is { } mark && mark != layer.Mark) steps.Add(new EditStep(layer, nameof(Mark), layer.Mark.ToString(), mark.ToString()));
            var marks = steps.Count;
            if (Visible is { } visible && visible != layer.Visible) steps.Add(new EditStep(layer, nameof(Visible), layer.Visible.ToString(), visible.ToString()));
            if (opacity is { } value && value != layer.OpacityByte) steps.Add(new EditStep(layer, nameof(Opacity), Percent(layer.OpacityByte), Percent(value)));
            changesPicture |= steps.Count > marks;
        }

        var changed = steps.Select(step => step.Layer!).Distinct().ToList();
        return new EditPlan(file, steps, changesPicture, () =>
        {
            foreach (var layer in changed)
            {
                layer.Mark = Mark ?? layer.Mark;
                layer.Visible = Visible ?? layer.Visible;
                layer.OpacityByte = opacity ?? layer.OpacityByte;
            }
        });
    }

    private static string Percent(byte opacity) => (opacity * 100.0 / 255).ToString("0.#", CultureInfo.InvariantCulture);
}
