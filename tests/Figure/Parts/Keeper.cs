namespace LayerTools.Figure.Parts;

/// <summary>The invented figure: a lighthouse keeper's apprentice, stacked as a body is and named as a tired artist names.</summary>
internal static class Keeper
{
    public const int Width = 5000;

    public const int Height = 6000;

    /// <summary>The fewest layers the figure can do with, groups not counted.</summary>
    public const int FewestLayers = 100;

    /// <summary>The tree, front to back.</summary>
    /// <param name="layers">How many layers besides groups, <see cref="FewestLayers"/> or more: small parts are left out or invented. Null for the figure as it was drawn.</param>
    public static IReadOnlyList<FigurePart> Create(int? layers = null)
    {
        List<FigurePart> tree =
        [
            SceneParts.CreateGuide(),
            SceneParts.CreateSketch(),
            LanternParts.CreateLight(),
            HatParts.Create(),
            HairParts.CreateFront(),
            HairParts.CreateSide("L"),
            HairParts.CreateSide("R"),
            FaceParts.CreateFace(),
            FaceParts.CreateHead(),
            ScarfParts.Create(),
            FaceParts.CreateNeck(),
            ArmParts.Create(),
            LanternParts.CreateLantern(),
            CoatParts.CreateFront(),
            CoatParts.CreateTorso(),
            LegParts.CreateHip(),
            LegParts.Create("L"),
            LegParts.Create("R"),
            HairParts.CreateBack(),
            CoatParts.CreateBack(),
            SceneParts.CreateFloor(),
            SceneParts.CreateBackdrop(),
        ];
        if (layers is not { } wanted) return tree;
        Thin(tree, Count(tree) - wanted);
        DetailParts.Add(tree, wanted - Count(tree));
        return tree;
    }

    private static int Count(List<FigurePart> parts) => parts.Sum(part => part.CountLayers());

    private static int Thin(List<FigurePart> parts, int surplus)
    {
        foreach (var part in parts.ToList())
        {
            if (surplus <= 0) break;
            if (part.IsGroup) surplus = Thin(part.Children, surplus);
            else if (part.IsSpare && parts.Remove(part)) surplus--;
        }

        return surplus;
    }
}
